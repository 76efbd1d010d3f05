/** The list of a sheet's tables, and the attribute by which one part names another. */
import { namespaces } from "../../package/names";
import { growing, listXml } from "../../xml/insert";
import { prefixed } from "../../xml/tag";
import { childOf, childrenOf, type Node } from "../../xml/tree";
import { intoSheet, type Placed, within } from "../frame";

/** The name of a relationship, with its namespace declared on the spot, whatever the part calls it. */
export const relationshipId = (id: string): string =>
  ` xmlns:r="${namespaces.relationships}" r:id="${id}"`;

export function listedTables(text: string, frame: Node, ids: readonly string[]): Placed[] {
  if (ids.length === 0) return [];
  const tag = prefixed(frame.prefix, "tablePart");
  const added = ids.map((id) => `<${tag}${relationshipId(id)}/>`).join("");
  const list = childOf(frame, "tableParts");
  const total = childrenOf(list, "tablePart").length + ids.length;
  if (list) return growing(text, list, total, added).map(within);
  return [intoSheet(frame, "tableParts", listXml(frame.prefix, "tableParts", total, added))];
}

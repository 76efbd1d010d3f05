/** The list of a sheet's tables, and the attribute by which one part names another. */
import { namespaces } from "../package/names";
import { appending } from "../xml/insert";
import { prefixed, withAttribute } from "../xml/tag";
import { childOf, childrenOf, type Node } from "../xml/tree";
import { intoSheet, type Placed, within } from "./frame";

/** The name of a relationship, with its namespace declared on the spot, whatever the part calls it. */
export const relationshipId = (id: string): string =>
  ` xmlns:r="${namespaces.relationships}" r:id="${id}"`;

export function listedTables(text: string, frame: Node, ids: readonly string[]): Placed[] {
  if (ids.length === 0) return [];
  const tag = prefixed(frame.prefix, "tablePart");
  const added = ids.map((id) => `<${tag}${relationshipId(id)}/>`).join("");
  const list = childOf(frame, "tableParts");
  const total = String(childrenOf(list, "tablePart").length + ids.length);
  if (!list) {
    const name = prefixed(frame.prefix, "tableParts");
    return [intoSheet(frame, "tableParts", `<${name} count="${total}">${added}</${name}>`)];
  }
  const open = withAttribute(text.slice(list.start, list.openEnd), "count", total);
  if (list.isEmptyTag) {
    const whole = `${open.replace(/\s*\/>$/, "")}>${added}</${prefixed(list.prefix, list.local)}>`;
    return [within({ start: list.start, end: list.end, text: whole })];
  }
  return [
    within({ start: list.start, end: list.openEnd, text: open }),
    within(appending(text, list, added)),
  ];
}

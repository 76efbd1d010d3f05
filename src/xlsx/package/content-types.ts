/** The list of what kind of part each part is: [Content_Types].xml. */
import { escapeAttribute } from "../xml/escape";
import { attribute } from "../xml/scan";
import { prefixed } from "../xml/tag";
import { childrenOf, type Node, readTree } from "../xml/tree";
import type { Package } from "./package";

const list = "[Content_Types].xml";

const isFor =
  (part: string) =>
  (node: Node): boolean =>
    attribute(node, "PartName")?.toLowerCase() === `/${part.toLowerCase()}`;

/** The content type of a part; "" when the list does not say. */
export function contentTypeOf(file: Package, part: string): string {
  const root = file.needParsed(list, "tree", (text) => readTree(list, text));
  const own = childrenOf(root, "Override").find(isFor(part));
  if (own) return attribute(own, "ContentType") ?? "";
  const extension = part.slice(part.lastIndexOf(".") + 1).toLowerCase();
  const usual = childrenOf(root, "Default").find(
    (node) => attribute(node, "Extension")?.toLowerCase() === extension,
  );
  return (usual && attribute(usual, "ContentType")) ?? "";
}

export function addContentType(file: Package, part: string, contentType: string): void {
  const text = file.need(list);
  const root = readTree(list, text);
  const tag = prefixed(root.prefix, "Override");
  const added = `<${tag} PartName="/${escapeAttribute(part)}" ContentType="${contentType}"/>`;
  file.set(list, text.slice(0, root.closeStart) + added + text.slice(root.closeStart));
}

export function removeContentType(file: Package, part: string): void {
  const text = file.need(list);
  const node = childrenOf(readTree(list, text), "Override").find(isFor(part));
  if (node) file.set(list, text.slice(0, node.start) + text.slice(node.end));
}

/** Texts of a part that are to read otherwise: what stands in an element, or in an attribute of its tag. */
import type { Replacement } from "../../../sheet/formula/splice";
import { escapeText } from "../../xml/escape";
import { withAttribute } from "../../xml/tag";
import type { Node } from "../../xml/tree";

type Standing = Pick<Node, "start" | "openEnd" | "closeStart" | "end">;

/** Another text between an element's tags. */
export const textOf = (node: Standing, now: string): Replacement => ({
  start: node.openEnd,
  end: node.closeStart,
  text: escapeText(now),
});

/** The element with all that is in it gone. */
export const without = ({ start, end }: Standing): Replacement => ({ start, end, text: "" });

/** Other attributes in the tag of an element; undefined takes one away. */
export function tagOf(
  part: string,
  { start, openEnd }: Pick<Node, "start" | "openEnd">,
  attributes: Readonly<Record<string, string | undefined>>,
): Replacement[] {
  const before = part.slice(start, openEnd);
  let tag = before;
  for (const [name, value] of Object.entries(attributes)) tag = withAttribute(tag, name, value);
  return tag === before ? [] : [{ start, end: openEnd, text: tag }];
}

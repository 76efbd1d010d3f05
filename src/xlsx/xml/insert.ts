/** Replacements that put text into an element; see splice.ts for what is done with them. */
import type { Replacement } from "../../sheet/formula/splice";
import { prefixed, withAttribute } from "./tag";
import type { Node } from "./tree";

type Place = Pick<Node, "prefix" | "local" | "start" | "openEnd" | "closeStart" | "isEmptyTag">;

/** The tag of an element without its ">" or "/>". */
export const unclosed = (tag: string): string =>
  tag.slice(0, tag.endsWith("/>") ? -2 : -1).trimEnd();

export const inserting = (at: number, added: string): Replacement => ({
  start: at,
  end: at,
  text: added,
});

/** As the last thing in an element; an empty tag is opened for it. */
export function appending(text: string, into: Place, added: string): Replacement {
  if (!into.isEmptyTag) return inserting(into.closeStart, added);
  const tag = unclosed(text.slice(into.start, into.openEnd));
  const whole = `${tag}>${added}</${prefixed(into.prefix, into.local)}>`;
  return { start: into.start, end: into.openEnd, text: whole };
}

/** More items at the end of a list that says how many it has. */
export function growing(text: string, list: Place, count: number, added: string): Replacement[] {
  const tag = withAttribute(text.slice(list.start, list.openEnd), "count", String(count));
  const { start, openEnd: end } = list;
  if (!list.isEmptyTag) return [{ start, end, text: tag }, inserting(list.closeStart, added)];
  const name = prefixed(list.prefix, list.local);
  return [{ start, end, text: `${unclosed(tag)}>${added}</${name}>` }];
}

/** A new list of items. */
export function listXml(prefix: string, local: string, count: number, items: string): string {
  const name = prefixed(prefix, local);
  return `<${name} count="${String(count)}">${items}</${name}>`;
}

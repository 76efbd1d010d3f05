/** Replacements that put text into an element; see splice.ts for what is done with them. */
import type { Replacement } from "../../formula/splice";
import { prefixed } from "./tag";
import type { Node } from "./tree";

type Place = Pick<Node, "prefix" | "local" | "start" | "openEnd" | "closeStart" | "isEmptyTag">;

/** As the last thing in an element; an empty tag is opened for it. */
export function appending(text: string, into: Place, added: string): Replacement {
  if (!into.isEmptyTag) return { start: into.closeStart, end: into.closeStart, text: added };
  const slash = text.lastIndexOf("/", into.openEnd);
  const name = prefixed(into.prefix, into.local);
  return { start: slash, end: into.openEnd, text: `>${added}</${name}>` };
}

export const inserting = (at: number, added: string): Replacement => ({
  start: at,
  end: at,
  text: added,
});

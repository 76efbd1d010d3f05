/** Where an expression stands with the parentheses around it: what its neighbours stand beside. */
import type { Span } from "./token";
import type { Node } from "./walk";

/** @example withBrackets(tree) // of the call in "=(PI())*2": { start: 1, end: 7 } */
export const withBrackets = (node: Node): Span =>
  node.kind === "omitted" ? node : (node.brackets ?? node);

/** From the beginning of one expression to the end of another. */
export const across = (first: Node, last: Node): Span => ({
  start: withBrackets(first).start,
  end: withBrackets(last).end,
});

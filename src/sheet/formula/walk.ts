/** Every node of a tree, in the order they are written; without recursion, so no depth matters. */
import { titreCallId } from "./names";
import type { Call, Expression, Omitted } from "./tree";

/** An expression, or the gap where one was left out. */
export type Node = Expression | Omitted;

export function partsOf(node: Node): readonly Node[] {
  switch (node.kind) {
    case "call":
      return node.arguments;
    case "applied":
      return [node.applies, ...node.arguments];
    case "prefix":
    case "postfix":
      return [node.operand];
    case "binary":
      return [node.left, node.right];
    default:
      return [];
  }
}

/** A node before its parts, the parts from left to right. */
export function* nodesOf(tree: Expression): Generator<Expression> {
  const waiting: Node[] = [tree];
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    if (node.kind !== "omitted") yield node;
    waiting.push(...[...partsOf(node)].reverse());
  }
}

/** The calls of our functions, an outer one before those among its arguments. */
export const titreCalls = (tree: Expression): Call[] =>
  [...nodesOf(tree)].filter(
    (node): node is Call => node.kind === "call" && titreCallId(node) !== undefined,
  );

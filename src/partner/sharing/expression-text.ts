/** Part of a formula written out again, with marks for its cells and plain formulas for our calls. */
import { titreCallId } from "../../sheet/formula/names";
import { withBrackets } from "../../sheet/formula/span";
import { type Replacement, splice } from "../../sheet/formula/splice";
import type { Call, Expression, Reference } from "../../sheet/formula/tree";
import { type Node, partsOf } from "../../sheet/formula/walk";
import type { Builder } from "./workings/builder";
import type { CallsInside } from "./answered";
import { locate } from "./workings/locate";
import { isOfOneValue } from "./shape";
import { spillOf } from "./spilled";

const isOurs = (node: Node | undefined): node is Call =>
  node?.kind === "call" && titreCallId(node) !== undefined;

/** The call of ours in SINGLE(call), which stands in a file for @call in a cell. */
function singled(node: Node): Call | undefined {
  if (node.kind !== "call" || !/^(?:_xlfn\.)?SINGLE$/i.test(node.name)) return undefined;
  const [given] = node.arguments;
  return isOurs(given) ? given : undefined;
}

const takesBlocks = (node: Node): boolean => node.kind === "call" && isOfOneValue(node.name);

/** How cells inside an expression are written: all of them, or the one at a place. */
export interface Pick {
  readonly row: number;
  readonly column: number;
}

function cellsText(reference: Reference, builder: Builder, pick: Pick | undefined): string {
  const cells = locate(reference, builder.around);
  const isMany = cells.rows * cells.columns > 1;
  return builder.mark(pick && isMany ? cells.cell(pick.row, pick.column) : cells.whole);
}

type NestedText = CallsInside["nestedText"];

function replaced(
  node: Node,
  builder: Builder,
  nestedText: NestedText,
  pick: Pick | undefined,
): Replacement[] {
  const put = (text: string): Replacement[] => [{ start: node.start, end: node.end, text }];
  if (node.kind === "reference") return put(cellsText(node, builder, pick));
  if (isOurs(node)) return put(nestedText(node, builder));
  const spill = spillOf(node, builder);
  if (spill) return put(builder.mark(pick ? spill.cell(pick.row, pick.column) : spill.whole));
  const alone = singled(node);
  if (alone) return put(nestedText(alone, builder));
  const inside = takesBlocks(node) ? undefined : pick;
  return partsOf(node).flatMap((part) => replaced(part, builder, nestedText, inside));
}

/**
 * @param nestedText a call of ours that stands in it
 * @param pick of blocks that the expression goes through cell by cell, write this cell
 */
export function expressionText(
  expression: Expression,
  builder: Builder,
  nestedText: NestedText,
  pick?: Pick,
): string {
  const { start, end } = withBrackets(expression);
  const changes = replaced(expression, builder, nestedText, pick).map((each) => ({
    ...each,
    start: each.start - start,
    end: each.end - start,
  }));
  return splice(builder.canonical.slice(start, end), changes);
}

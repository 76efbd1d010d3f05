/**
 * Where a subtotal is held: what it leaves out, rows that are hidden and other subtotals, is not worked
 * out here. Asked whenever formulas change, since another subtotal may be typed into what it reads.
 */
import { keyAt } from "./cell-keys";
import type { Asked } from "./marks";
import type { ReadBlock } from "./readers";

/** Of each sheet, by the grid's own name: rows that are not shown. */
export type HiddenRows = ReadonlyMap<string, readonly number[]>;

const isSubtotal = /\bSUBTOTAL\s*\(/i;
/** What a subtotal leaves out. */
const isLeftOut = /\b(?:SUBTOTAL|AGGREGATE)\s*\(/i;

const overHidden = "It uses SUBTOTAL over rows that are hidden or filtered.";
const overOthers = "It uses SUBTOTAL over other subtotals.";

const within = ({ top, bottom }: ReadBlock, row: number): boolean => top <= row && row <= bottom;

/** The reason for each formula that has one. */
export function subtotalReasons(
  asked: readonly Asked[],
  hidden: HiddenRows,
): ReadonlyMap<Asked, string> {
  const subtotals = asked.filter(({ formula, held }) => !held && isSubtotal.test(formula));
  if (subtotals.length === 0) return new Map();
  const leftOut = asked.filter(({ formula }) => isLeftOut.test(formula));
  const reasonOf = (each: Asked): string | undefined => {
    for (const block of each.reads) {
      if ((hidden.get(block.sheet) ?? []).some((row) => within(block, row))) return overHidden;
      const isOver = leftOut.some(
        ({ sheet, row, column }) =>
          sheet === block.sheet &&
          within(block, row) &&
          block.left <= column &&
          column <= block.right &&
          (sheet !== each.sheet || keyAt(row, column) !== keyAt(each.row, each.column)),
      );
      if (isOver) return overOthers;
    }
    return undefined;
  };
  return new Map(
    subtotals.flatMap((each) => {
      const says = reasonOf(each);
      return says === undefined ? [] : [[each, says] as const];
    }),
  );
}

/** The recorded row against the pane: two ways to one figure. */
import type { RecordOutcome } from "../../workbook/planning/plan";
import { digits } from "../widgets/shown-number";

/** Two doubles of one figure, but for the last digit. */
const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-14 * Math.abs(b);

/**
 * Does the row's own formula give the % FFA that the pane shows?
 * @returns a sentence when it does not, else nothing; a row that could not be read back says nothing
 */
export function atOdds(outcome: RecordOutcome, ffa: number): readonly string[] {
  const found = outcome.kind === "recorded" ? outcome.results["FFA %"] : undefined;
  if (typeof found !== "number" || isSame(found, ffa)) return [];
  return [
    `The row shows ${digits(found, 6)} % FFA and the pane ${digits(ffa, 6)} %: look for a changed formula or cell in it.`,
  ];
}

/**
 * Arithmetic as the judge of grams that are said to have been weighed, where no column holds a dose: what comes
 * out to its last digit by a rule, right or wrong, in nearly all rows was never read off a balance.
 */
import { columnOf, type LogbookMapping } from "../recognising/mapping";
import type { SheetCells } from "../recognising/sheet-cells";
import { fromNothing } from "./arithmetic/row-arithmetic";
import { expectedFigure } from "./arithmetic/expected-figure";
import type { CheckedFigure, CheckedRow } from "./judging/checked";
import { Lots } from "./lots";
import { weighedAlone, weighedAsWorked, weighedTolerance } from "./reading/weighed-alone";
import { Tally } from "./reporting/tally";
import { TableCheck } from "./table-check";

const leastRows = 5;
const nearlyAll = 0.85;
/** Rounding along the way. */
const rounding = 0.0015;

/** By the right way, or by the one mistake that it is said to be; a hand on the scale does as much as a small one. */
function isByRule(
  { figure, verdict }: CheckedFigure,
  { readings }: CheckedRow,
  unit: string | undefined,
): boolean {
  if (verdict.kind === "not-checked") return false;
  const made = verdict.kind === "wrong" ? verdict.slip : undefined;
  if (verdict.kind === "wrong") {
    const off = Math.abs(figure.value / verdict.should - 1);
    if (made?.made.length !== 1 || off <= weighedTolerance) return false;
  }
  const { written } = verdict;
  const should = expectedFigure("catalyst", unit, written, readings, made?.ways ?? {}, fromNothing);
  if (should === undefined) return false;
  return Math.abs(figure.value - should) <= figure.halfDigit + rounding * Math.abs(should);
}

/** The mapping as it is checked: what was weighed is the dose, to its digits or as people weigh. */
export function weighedByRule(mapping: LogbookMapping, cells: SheetCells): LogbookMapping {
  if (!columnOf(mapping, "weighed")) return mapping;
  const worked = weighedAsWorked(mapping);
  const table = new TableCheck(worked, cells, new Lots(), undefined, new Tally());
  const unit = columnOf(worked, "catalyst")?.unit;
  const rows = table
    .sampleChecked()
    .flatMap((row) =>
      row.figures
        .filter(({ figure: { role } }) => role === "catalyst")
        .map((each) => isByRule(each, row, unit)),
    );
  const share = rows.filter((each) => each).length / rows.length;
  return rows.length >= leastRows && share >= nearlyAll ? worked : weighedAlone(mapping);
}

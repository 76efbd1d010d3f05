/** After writing: does every cell of the row hold what was written? */
import type { CellContent, Cells } from "../../../sheet/port";
import { titreIdOf } from "../../../sheet/formula/names";
import { tokensOf } from "../../../sheet/formula/token";
import type { Difference, Plan, PlannedCell } from "../plan";
import { isSameFormula } from "../../../sheet/formula/same-formula";
import { valueText } from "../preview-text";

interface ReadBack {
  readonly value: CellContent;
  readonly formula: string;
}

/** Errors that say that a function did not answer, not that a reading is wrong. */
const notAnswered = ["#NAME?", "#BUSY!", "#CONNECT!"];

const errorOf = (value: CellContent): string => (typeof value === "object" ? value.error : "");

/** A formula of somebody else's may show what it likes. */
const callsOurs = (formula: string): boolean =>
  tokensOf(formula).some(({ kind, text }) => kind === "function" && titreIdOf(text) !== undefined);

const holding = ({ value, formula }: ReadBack): string => {
  const text = formula === "" ? valueText(value) : formula;
  return text === "" ? "nothing" : `"${text}"`;
};

/** What is wrong with a cell, in words; undefined when it is as written. */
function trouble(
  { content, address, shown }: PlannedCell,
  found: ReadBack,
  table: string,
): string | undefined {
  if (content.kind === "keep") return undefined;
  if (content.kind === "formula") {
    const { value, formula } = found;
    if (!isSameFormula(formula, content.formula, table)) {
      return `${address} should hold the formula written there, and holds ${holding(found)}.`;
    }
    const error = errorOf(value);
    return notAnswered.includes(error) && callsOurs(formula)
      ? `${address} shows ${error}: its function did not answer. Select the cell, press F2 and Enter.`
      : undefined;
  }
  if (found.formula === "" && found.value === content.value) return undefined;
  return `${address} should hold ${shown === "" ? "nothing" : `"${shown}"`}, and holds ${holding(found)}.`;
}

const foundIn = (cells: Cells, { block }: PlannedCell): ReadBack => {
  const row = block.row - cells.block.row;
  const column = block.column - cells.block.column;
  return {
    value: cells.values[row]?.[column] ?? "",
    formula: cells.formulas[row]?.[column] ?? "",
  };
};

/** The error that a formula shows; "" for none. */
export function errorAt(cells: Cells, cell: PlannedCell): { error: string; formula: string } {
  const { value, formula } = foundIn(cells, cell);
  return { error: formula === "" ? "" : errorOf(value), formula };
}

/** The error that a formula with our functions shows; "" for none. */
export function errorIn(cells: Cells, cell: PlannedCell): string {
  const { value, formula } = foundIn(cells, cell);
  return callsOurs(formula) ? errorOf(value) : "";
}

/** A plan may write another sheet too: that is read back by itself (read-back.ts). */
const ofSheet = ({ cells: planned }: Plan, { block }: Cells): readonly PlannedCell[] =>
  planned.filter((cell) => cell.block.sheet === block.sheet);

/** Each cell of the plan that is not as written. `cells` must cover the plan's block. */
export const verifyRecord = (plan: Plan, cells: Cells): Difference[] =>
  ofSheet(plan, cells).flatMap((cell) => {
    const sentence = trouble(cell, foundIn(cells, cell), plan.table);
    return sentence === undefined
      ? []
      : [{ address: cell.address, heading: cell.heading, sentence }];
  });

/** What the calculated cells of the row show, by heading. */
export const resultsIn = (plan: Plan, cells: Cells): Record<string, CellContent> =>
  Object.fromEntries(
    ofSheet(plan, cells)
      .filter(({ block }) => block.row < plan.block.row + plan.block.rows)
      .filter(({ block }) => block.row >= plan.block.row)
      .map((cell) => ({ heading: cell.heading, ...foundIn(cells, cell) }))
      .filter(({ formula }) => formula !== "")
      .map(({ heading, value }) => [heading, value]),
  );

/** Cells that are written anew: those of a table that spilled, and sentences that lose their formula. */
import { formulaFromFile } from "../../../xlsx/formulas/from-file";
import type { CellValue } from "../../../xlsx/model";
import type { Plan, WantedCells } from "../../../xlsx/patch/wanted";
import type { Instance } from "./instance";
import { type FoundFormula, placeKey } from "../parts/sheet-formulas";
import { type FormulaTemplate, written } from "./template";

export interface Converted {
  readonly found: FoundFormula;
  readonly instance: Instance;
  readonly template: FormulaTemplate;
}

const stored = (value: CellValue | undefined): CellValue => value ?? "";

/** A plain formula, or the value it had, in each cell of a table that spilled. */
export function wantTable(wanted: WantedCells, { found, instance, template }: Converted): void {
  const { raw, array, answers } = found;
  const { rows, columns } = array ?? { rows: 1, columns: 1 };
  for (let down = 0; down < rows; down++) {
    for (let across = 0; across < columns; across++) {
      const place = { row: raw.row + down, column: raw.column + across };
      const isFirst = down === 0 && across === 0;
      const value = stored(
        isFirst ? found.value() : answers.get(placeKey(place.row, place.column)),
      );
      const parts = template.rows[down]?.[across];
      const own = { ...place, rows: 1, columns: 1 };
      const formula = parts && written(parts, instance, "here");
      const plan: Plan = formula
        ? {
            kind: "formula",
            formula,
            meant: { formula: formulaFromFile(formula), table: undefined },
            result: value,
            ...(template.isArray ? { array: own } : {}),
          }
        : { kind: "value", value };
      if (!parts && !isFirst) wanted.set({ ...place, plan: { kind: "keep" }, dress: {} });
      else wanted.set({ ...place, plan, dress: {} });
    }
  }
}

/** The cell keeps what it shows; so do the others that its formula answered in. */
export function wantSentence(
  wanted: WantedCells,
  { raw, array, answers, value }: FoundFormula,
): void {
  const own = value();
  const plan: Plan = own === undefined ? { kind: "nothing" } : { kind: "value", value: own };
  wanted.set({ row: raw.row, column: raw.column, plan, dress: {} });
  if (!array) return;
  for (const place of answers.keys()) {
    const [row = 0, column = 0] = place.split(",").map(Number);
    wanted.set({ row, column, plan: { kind: "keep" }, dress: {} });
  }
}

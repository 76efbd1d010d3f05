/** What holding must know of the file that is shown: which of its formulas are arrays, and what is stuck. */
import type { Area } from "../../sheet/area";
import type { OpenedFile } from "../file/opened-file";
import { isWorkable } from "../file/workable";
import { sheetKey } from "../sheet-key";
import { keyAt } from "./cell-keys";
import type { At } from "./marks";
import type { ReadBlock } from "./readers";
import type { HiddenRows } from "./subtotals";

/** A formula as the file has it. */
export interface FileFormula {
  readonly formula: string;
  /** It is an array formula, over this area. */
  readonly array: Area | undefined;
}

export interface HeldFile {
  readonly dates: 1900 | 1904;
  /** By the grid's name of the sheet and the cell. */
  readonly formulas: ReadonlyMap<string, ReadonlyMap<number, FileFormula>>;
  readonly hiddenRows: HiddenRows;
  /** Cells whose formula the grid is not given at all, and why. */
  readonly stuck: ReadonlyMap<string, ReadonlyMap<number, string>>;
}

/** The cells over which an array formula of the file answers, where they are more than one. */
export function areaInFile(
  file: HeldFile | undefined,
  { sheet, row, column }: At,
): ReadBlock | undefined {
  const array = file?.formulas.get(sheet)?.get(keyAt(row, column))?.array;
  if (!array || array.rows * array.columns === 1) return undefined;
  const { row: top, column: left, rows, columns } = array;
  return { sheet, top, left, bottom: top + rows - 1, right: left + columns - 1 };
}

export const unworkable = "It is longer, or reads more cells, than can be worked out here.";
const whatIf = "It is part of a what-if table of the spreadsheet program.";

export function heldFile(file: Pick<OpenedFile, "sheets" | "dates">): HeldFile {
  const formulas = new Map<string, Map<number, FileFormula>>();
  const stuck = new Map<string, Map<number, string>>();
  for (const sheet of file.sheets) {
    const known = new Map<number, FileFormula>();
    const out = new Map<number, string>();
    for (const { row, column, formula, array, isWhatIf } of sheet.cells) {
      const key = keyAt(row, column);
      if (isWhatIf) out.set(key, whatIf);
      if (formula === undefined) continue;
      if (isWorkable(formula)) known.set(key, { formula, array });
      else out.set(key, unworkable);
    }
    if (known.size > 0) formulas.set(sheetKey(sheet.name), known);
    if (out.size > 0) stuck.set(sheetKey(sheet.name), out);
  }
  const hiddenRows = new Map(file.sheets.map((each) => [sheetKey(each.name), each.hiddenRows]));
  return { dates: file.dates, formulas, hiddenRows, stuck };
}

/** What one is told of a file just opened: what it keeps unshown, and what is shown otherwise. */
import { counted } from "../../workbook/counted";
import { keptWords } from "../../workbook/xlsx/kept-words";
import type { GridState } from "../file/grid-state";
import type { OpenedFile } from "../file/opened-file";

const isError = (value: unknown): boolean => typeof value === "object" && value !== null;

/** Formulas with a result in the file that show an error in the grid. */
function unworked(file: OpenedFile, state: GridState): number {
  let count = 0;
  for (const sheet of file.sheets) {
    const shown = state.sheets.find(({ name }) => name === sheet.name);
    for (const { row, column, formula, value } of sheet.cells) {
      if (formula === undefined || value === undefined || isError(value)) continue;
      if (isError(shown?.cells.get(row)?.get(column)?.value)) count += 1;
    }
  }
  return count;
}

export function keptList(file: OpenedFile, state: GridState): string[] {
  const others = file.sheets.filter(({ kind }) => kind === "other").map(({ name }) => name);
  const unknown = unworked(file, state);
  return [
    ...file.kept.map(keptWords),
    ...others.map((name) => `the sheet ${name}, which has no cells`),
    ...(unknown === 0
      ? []
      : [
          `the results of ${counted(unknown, "formula")} that cannot be worked out here and show an error`,
        ]),
  ];
}

/** The first row written into those below it, and how the selected cells look: number formats from a short list, underlining, lines around. */
import {
  BooleanNumber,
  BorderStyleTypes,
  BorderType,
  ICommandService,
  type IStyleData,
} from "@univerjs/core";
import { SetBorderBasicCommand, SetStyleCommand } from "@univerjs/sheets";
import { SheetCopyDownCommand } from "@univerjs/preset-sheets-core";
import { type Bench, selected } from "./bench";

/** Cells that may be dressed at a time: every one of them becomes a cell of the file. */
const most = 50_000;

/** False, and said, where there are too many. */
function isFit(bench: Bench): boolean {
  const areas = selected(bench)?.areas ?? [];
  const count = areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
  if (count > most) {
    bench.refuse(
      "That is more than 50000 cells: select the cells that are filled, not whole columns.",
    );
  }
  return count > 0 && count <= most;
}

const rangesOf = (bench: Bench) =>
  (selected(bench)?.areas ?? []).map(({ row, column, rows, columns }) => ({
    startRow: row,
    startColumn: column,
    endRow: row + rows - 1,
    endColumn: column + columns - 1,
  }));

function style<Key extends keyof IStyleData>(
  bench: Bench,
  type: Key,
  value: IStyleData[Key],
): void {
  if (!isFit(bench)) return;
  void bench.grid.injector
    .get(ICommandService)
    .executeCommand(SetStyleCommand.id, { style: { type, value } });
}

export const numberFormat = (bench: Bench, pattern: string): void => style(bench, "n", { pattern });

/** As the first of the selected cells is, or not. */
export function underline(bench: Bench): void {
  const cell = selected(bench)?.cell;
  if (!cell) return;
  const { workbook } = bench.grid.cells.names;
  const held = workbook.getSheetBySheetName(cell.sheet)?.getCellRaw(cell.row, cell.column);
  const isOn = workbook.getStyles().getStyleByCell(held)?.ul?.s === BooleanNumber.TRUE;
  style(bench, "ul", { s: isOn ? BooleanNumber.FALSE : BooleanNumber.TRUE });
}

const types = { all: BorderType.ALL, around: BorderType.OUTSIDE, none: BorderType.NONE } as const;

export function lines(bench: Bench, which: keyof typeof types): void {
  if (!isFit(bench)) return;
  const { names } = bench.grid.cells;
  void bench.grid.injector.get(ICommandService).executeCommand(SetBorderBasicCommand.id, {
    unitId: names.unit,
    subUnitId: names.workbook.getActiveSheet().getSheetId(),
    ranges: rangesOf(bench),
    value: { type: types[which], color: "#14303a", style: BorderStyleTypes.THIN },
  });
}

/** The first of the selected rows, or the row above a single one, into all the others: formulas adapt. */
export function fillDown(bench: Bench): void {
  if (isFit(bench)) {
    void bench.grid.injector.get(ICommandService).executeCommand(SheetCopyDownCommand.id);
  }
}

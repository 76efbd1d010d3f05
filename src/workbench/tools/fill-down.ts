/** The first of the selected rows, or the row above a single one, written into all the others: formulas adapt. */
import { type ICellData, ICommandService } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { filledDown } from "../../xlsx/formulas/shared";
import { type Bench, selected } from "./bench";

const most = 50_000;

export function fillDown(bench: Bench): void {
  const { grid } = bench;
  const { cells } = grid;
  const now = selected(bench);
  const [area] = now?.areas ?? [];
  if (!now || !area) return;
  if (now.areas.length > 1) return bench.refuse("Select one block of cells to fill down.");
  const { sheet } = now.cell;
  const from = area.rows === 1 ? area.row - 1 : area.row;
  const last = area.row + area.rows - 1;
  if (from < 0) return bench.refuse("There is no row above the first one to fill down from.");
  if ((last - from) * area.columns > most) {
    return bench.refuse("That is more than 50,000 cells: select fewer rows to fill down.");
  }
  const held = cells.names.sheet(sheet);
  const styles = cells.names.workbook.getStyles();
  const value: Record<number, Record<number, ICellData>> = {};
  for (let row = from + 1; row <= last; row += 1) {
    if (held?.getRowVisible(row) === false) continue;
    const cellsOf: Record<number, ICellData> = (value[row] = {});
    for (let column = area.column; column < area.column + area.columns; column += 1) {
      const above = held?.getCellRaw(from, column);
      const formula = cells.formula({ sheet, row: from, column });
      const style = styles.getStyleByCell(above);
      cellsOf[column] = {
        ...(formula === ""
          ? { v: above?.v ?? null, t: above?.t ?? null, f: null, p: above?.p ?? null }
          : { f: filledDown(formula, row - from), v: null, p: null }),
        si: null,
        ...(style ? { s: { ...style } } : {}),
      };
    }
  }
  void grid.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
    unitId: cells.names.unit,
    subUnitId: cells.names.sheetId(sheet),
    range: {
      startRow: from + 1,
      startColumn: area.column,
      endRow: last,
      endColumn: area.column + area.columns - 1,
    },
    value,
  });
}

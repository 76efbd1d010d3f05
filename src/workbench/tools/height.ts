/** The height of the selected rows, in points, as spreadsheets count it. */
import { ICommandService } from "@univerjs/core";
import { SetRowHeightCommand } from "@univerjs/sheets";
import { type Bench, selected } from "./bench";
import { field, labelled, panel, press } from "./panel";

const pointsPerPixel = 72 / 96;
const least = 6;
const most = 409;

export function rowHeight(bench: Bench): void {
  const now = selected(bench);
  if (!now) return;
  const { names } = bench.grid.cells;
  const sheet = names.workbook.getActiveSheet();
  const points = Math.round(sheet.getRowHeight(now.cell.row) * pointsPerPixel * 10) / 10;
  const { body, close } = panel(bench, "Row height");
  const height = field(String(points), "number");
  Object.assign(height, { min: String(least), max: String(most), step: "any", required: true });
  const set = (): void => {
    const given = Number(height.value);
    if (!(given >= least && given <= most)) {
      height.reportValidity();
      return;
    }
    void bench.grid.injector.get(ICommandService).executeCommand(SetRowHeightCommand.id, {
      unitId: names.unit,
      subUnitId: sheet.getSheetId(),
      ranges: now.areas.map(({ row, rows, column, columns }) => ({
        startRow: row,
        endRow: row + rows - 1,
        startColumn: column,
        endColumn: column + columns - 1,
      })),
      value: given / pointsPerPixel,
    });
    close();
  };
  body.noValidate = true;
  body.append(
    labelled(`Points, ${String(least)} to ${String(most)}; a usual row has 15`, height),
    press("Set", set, "submit"),
  );
  height.focus();
  height.select();
}

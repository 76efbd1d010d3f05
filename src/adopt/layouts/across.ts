/** A sheet whose lots stand across, each in a column of its own: read with rows and columns changed round. */
import type { SheetCells } from "../recognising/sheet-cells";

const turned = <T>(rows: readonly (readonly T[])[]): T[][] =>
  (rows[0] ?? []).map((_, at) => rows.map((row) => row[at] as T));

/** A wider or longer sheet is no logbook with lots across. */
const most = 400;

export const mayBeAcross = ({ values }: SheetCells): boolean =>
  values.length <= most && (values[0]?.length ?? 0) <= most;

/** Formulas speak of columns where rows are meant: the figures alone are kept. */
export const turnedRound = (cells: SheetCells): SheetCells => ({
  sheet: cells.sheet,
  row: cells.column,
  column: cells.row,
  values: turned(cells.values),
  formulas: turned(cells.formulas).map((row) => row.map(() => "")),
  formats: turned(cells.formats),
  isAcross: true,
});

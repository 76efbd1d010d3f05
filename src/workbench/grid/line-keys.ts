/** Ctrl and plus or minus where whole rows or columns are selected: inserted before them, or deleted. */
import { type Injector, type IRange, RANGE_TYPE } from "@univerjs/core";
import { SheetsSelectionsService } from "@univerjs/sheets";
import type { WorkbookCells } from "../engine/workbook-cells";
import type { StructuralAct } from "../../xlsx";

const signOf = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): "+" | "-" | undefined => {
  if (!(ctrlKey || metaKey) || altKey) return undefined;
  if (key === "+" || key === "=") return "+";
  return key === "-" || key === "_" ? "-" : undefined;
};

function actFor(sign: "+" | "-", sheet: string, range: IRange): StructuralAct | undefined {
  const { rangeType } = range;
  if (rangeType !== RANGE_TYPE.ROW && rangeType !== RANGE_TYPE.COLUMN) return undefined;
  const isRows = rangeType === RANGE_TYPE.ROW;
  const first = isRows ? range.startRow : range.startColumn;
  const count = (isRows ? range.endRow : range.endColumn) - first + 1;
  const lines = isRows ? "rows" : "columns";
  return sign === "+"
    ? { do: `insert-${lines}`, sheet, before: first, count }
    : { do: `delete-${lines}`, sheet, first, count };
}

export function watchLineKeys(
  container: HTMLElement,
  injector: Injector,
  cells: WorkbookCells,
  does: (act: StructuralAct) => void,
): void {
  container.addEventListener(
    "keydown",
    (event) => {
      const sign = signOf(event);
      const range = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
      const sheet = cells.names.workbook.getActiveSheet().getName();
      const act = sign && range && actFor(sign, sheet, range);
      // otherwise the page is made larger or smaller, as everywhere
      if (!act) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      does(act);
    },
    { capture: true },
  );
}

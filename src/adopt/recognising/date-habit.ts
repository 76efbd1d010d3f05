/** In which order a book writes its days: as its own days say that can only be one, or as a person said. */
import { columnOf } from "./mapping";
import type { LogbookMapping } from "./shape";
import { heldCell, type SheetCells } from "./sheet-cells";
import { type DateOrder, orderOf } from "./typed-date";

interface DateHabit {
  readonly order: DateOrder;
  /** Days that may be two, and nothing in the book says which: the first of them, as it is written. */
  readonly asked?: string;
}

function counted(mapping: LogbookMapping, cells: SheetCells) {
  const column = columnOf(mapping, "date");
  const found = { "day first": 0, "month first": 0, either: "" };
  if (!column) return found;
  for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1) {
    const { value } = heldCell(cells, row, column.column);
    const order = typeof value === "string" ? orderOf(value) : undefined;
    if (order === "either") found.either ||= String(value);
    else if (order !== undefined) found[order] += 1;
  }
  return found;
}

/** The day first, unless the book says otherwise. */
export function dateHabit(mapping: LogbookMapping, cells: SheetCells): DateHabit {
  const found = counted(mapping, cells);
  const isTold = found["day first"] !== found["month first"];
  const own = found["month first"] > found["day first"] ? "month first" : "day first";
  return {
    order: mapping.dates ?? own,
    ...(found.either === "" || isTold ? {} : { asked: found.either }),
  };
}

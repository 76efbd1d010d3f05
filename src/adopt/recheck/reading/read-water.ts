/** The water of a row's oil, in %, where its column says in which unit it is. */
import { columnOf, type LogbookMapping } from "../../recognising/mapping";
import { heldCell, type SheetCells } from "../../recognising/sheet-cells";
import { figureFrom } from "../../recognising/typed-number";

/** 0.06 % is 600 mg/kg, as parts in a million are of a mass. */
const inPercent: Readonly<Record<string, number>> = { "%": 1, ppm: 1e-4, "mg/kg": 1e-4 };

/** Nobody pumps more water than this into a reactor: it is another unit, or a slip. */
const mostPercent = 20;

export function waterReader(
  mapping: LogbookMapping,
  cells: SheetCells,
): (row: number) => number | undefined {
  const column = columnOf(mapping, "waterContent");
  const scale = inPercent[column?.unit ?? ""];
  if (!column || scale === undefined) return () => undefined;
  return (row) => {
    const { value, format } = heldCell(cells, row, column.column);
    const figure = figureFrom(value, mapping.commas, column.unit);
    if (!figure || figure.value <= 0) return undefined;
    const isShownAsPercent = typeof value === "number" && format.includes("%");
    // as decimals: 600 ppm are 0.06 %, and not a little more
    const percent = Number((figure.value * (isShownAsPercent ? 100 : scale)).toPrecision(12));
    return percent > mostPercent ? undefined : percent;
  };
}

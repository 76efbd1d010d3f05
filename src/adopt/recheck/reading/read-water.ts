/** The water of a row's oil, in %, where its column says in which unit it is. */
import { columnOf, type LogbookMapping } from "../../recognising/mapping";
import { heldCell, type SheetCells } from "../../recognising/sheet-cells";
import { dishReader } from "./read-dish";
import { figureFrom } from "../../recognising/typed-number";

/** 0.06 % is 600 mg/kg, as parts in a million are of a mass. */
const inPercent: Readonly<Record<string, number>> = { "%": 1, ppm: 1e-4, "mg/kg": 1e-4 };

/** Nobody pumps more water than this into a reactor, and no oil is known to be drier: it is another unit, or a slip. */
const mostPercent = 20;
const leastPercent = 0.0005;

/** What is written, as it is written, and why it is not read. */
export interface OddWater {
  readonly figure: number;
  readonly unit: string;
  readonly why: string;
}

export interface Water {
  /** % of the oil; undefined where none is written, or what is written cannot be. */
  readonly percent: number | undefined;
  readonly odd?: OddWater;
}

function oddWhy(percent: number): string {
  if (percent < 0) return "and water is never below 0";
  if (percent > 100) return "and nothing holds more than 100 %";
  if (percent > mostPercent) return "more than oil for a batch ever holds: is its unit another?";
  return percent < leastPercent ? "less than oil ever holds: is its unit another?" : "";
}

const otherwise = "and the dish weighed before and after heating comes to another figure";
/** Other digits and a balance that drifts a little. */
const near = 0.02;

export function waterReader(mapping: LogbookMapping, cells: SheetCells): (row: number) => Water {
  const column = columnOf(mapping, "waterContent");
  const dishAt = dishReader(mapping, cells);
  const unit = column?.unit ?? "";
  const scale = inPercent[unit];
  const byDish = (row: number): Water => ({ percent: dishAt(row)?.percent });
  if (!column || scale === undefined) return byDish;
  return (row) => {
    const { value, format } = heldCell(cells, row, column.column);
    const figure = figureFrom(value, mapping.commas, column.unit);
    if (!figure || figure.value === 0) return byDish(row);
    const isShownAsPercent = typeof value === "number" && format.includes("%");
    const factor = isShownAsPercent ? 100 : scale;
    // as decimals: 600 ppm are 0.06 %, and not a little more
    const percent = Number((figure.value * factor).toPrecision(12));
    const shown = isShownAsPercent
      ? { figure: percent, unit: "%" }
      : { figure: figure.value, unit };
    const dish = dishAt(row);
    const why = oddWhy(percent);
    if (why !== "") return { percent: dish?.percent, odd: { ...shown, why } };
    const allowed = 0.5 * 10 ** -figure.decimals * factor + (dish?.doubt ?? 0) + near * percent;
    const isSame = !dish || Math.abs(percent - dish.percent) <= allowed;
    return isSame ? { percent } : { percent, odd: { ...shown, why: otherwise } };
  };
}

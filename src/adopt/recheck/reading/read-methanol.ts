/** The methanol of a row in litres, where its column holds all of it in a unit that is known. */
import { exact } from "../../../core/exact/exact";
import { methanolDensity } from "../../../core/reference/liquids";
import { amountMeant } from "../../recognising/answers";
import { columnOf, type LogbookMapping } from "../../recognising/mapping";
import { heldCell, type SheetCells } from "../../recognising/sheet-cells";
import { figureFrom } from "../../recognising/typed-number";
import { says } from "../../recognising/words/speaks-for";

export interface MethanolReader {
  /** Undefined where nothing is filled in. */
  readonly litres: (row: number) => number | undefined;
  /** Another column is of methanol too: this one may hold a part of it. */
  readonly isPart: boolean;
}

export function methanolReader(
  mapping: LogbookMapping,
  cells: SheetCells,
): MethanolReader | undefined {
  const column = columnOf(mapping, "methanol");
  const meant = column && amountMeant(column.unit, column.times);
  if (!column || !meant) return undefined;
  const inOne = meant.unit.factor.times(exact(meant.times));
  const litresInOne = (
    meant.unit.measures === "mass" ? inOne.div(methanolDensity) : inOne
  ).toNumber();
  return {
    litres: (row) => {
      const { value } = heldCell(cells, row, column.column);
      const figure = figureFrom(value, mapping.commas, column.unit);
      return figure && figure.value > 0 ? figure.value * litresInOne : undefined;
    },
    isPart: mapping.columns.some(
      (each) => each !== column && says(each.heading, "methanol", undefined),
    ),
  };
}

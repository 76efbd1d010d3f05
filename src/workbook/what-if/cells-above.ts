/** The cells above the table: what is the same for every dose, each figure with its words beside it. */
import { amountUnitNames } from "../../core/quantity/units";
import type { BookCell, BookValue } from "../../sheet/book";
import { figureCell, type FigureId, figuresAbove } from "./dose-inputs";
import type { WhatIfQuestion } from "./question";
import type { Refer } from "./reference";

export type InputId = FigureId | "unit" | "oil" | "temperature" | "limit";

export interface Input {
  readonly id: InputId;
  readonly label: string;
  readonly cell: BookCell | null;
}

export interface Inputs {
  readonly all: readonly Input[];
  /** $A$7: where a formula finds one. */
  readonly at: (id: InputId) => string;
}

const given = (value: BookValue): BookCell => ({ value, style: "input" });

/** @param row of the first of them, counted from the table's first cell */
export function inputsOf(question: WhatIfQuestion, refer: Refer, row: number): Inputs {
  const { unit, by, columns, oilCell, temperature, limitFfa } = question;
  const [first] = columns;
  if (!first) throw new RangeError("a table without columns");
  const above = figuresAbove(by, columns);
  const order: InputId[] = ["unit", "oil", "temperature", ...above.map(({ id }) => id), "limit"];
  const at = (id: InputId): string => refer.fixed(row + order.indexOf(id), 0);
  return {
    at,
    all: [
      {
        id: "unit",
        label: `Unit of the batch sizes: ${amountUnitNames}`,
        cell: given(unit.name),
      },
      { id: "oil", label: "Oil, or its density at 20 C, kg/L", cell: given(oilCell) },
      { id: "temperature", label: "Oil temperature, C", cell: given(temperature.toNumber()) },
      ...above.map(({ id, label, unit: of }) => ({
        id,
        label: `${label}, ${of}`,
        cell: figureCell(id, first, at),
      })),
      { id: "limit", label: "Allowed acid, % FFA as oleic", cell: given(limitFfa.toNumber()) },
    ],
  };
}

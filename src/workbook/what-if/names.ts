/** What the rows, the columns and the chart of a what-if table are called. */
import { shown } from "../../core/exact/shown";
import type { AmountUnit } from "../../core/quantity/units";
import type { Compared, DoseColumn, WhatIfQuestion } from "./question";

/** Several of what is compared: "4 acid values". */
export const comparedNames: Record<Compared, readonly [one: string, several: string]> = {
  acid: ["acid value", "acid values"],
  assay: ["assay", "assays"],
  charge: ["base charge", "base charges"],
  base: ["base", "bases"],
};

const unitNames: Record<string, string> = {
  l: "litres",
  ml: "millilitres",
  us_gal: "US gallons",
  uk_gal: "imperial gallons",
  g: "grams",
  kg: "kilograms",
  lb: "pounds",
};

/** In full, so that no gallon is ever just a gallon. */
export const unitName = ({ name, shown: short }: AmountUnit): string => unitNames[name] ?? short;

/** A column, said so that it can stand beside a line: "5.6 mg KOH/g", "NQ-44", "KOH". */
export function columnName(by: Compared, { acid, base, assay, charge }: DoseColumn): string {
  switch (by) {
    case "acid":
      return acid.lot === undefined ? `${shown(acid.value)} mg KOH/g` : `lot ${String(acid.lot)}`;
    case "assay":
      return `${shown(assay)} % assay`;
    case "charge":
      return `${shown(charge)} % charge`;
    case "base":
      return base.name;
  }
}

const counted = (count: number, [one, several]: readonly [string, string]): string =>
  `${String(count)} ${count === 1 ? one : several}`;

/** "12 batch sizes by 4 acid values". */
export const tableName = ({ sizes, columns, by }: WhatIfQuestion): string =>
  `${counted(sizes.length, ["batch size", "batch sizes"])} by ${counted(columns.length, comparedNames[by])}`;

/** What the rows, the columns and the chart of a what-if table are called. */
import type { Exact } from "../../core/exact/exact";
import { rounded, shown } from "../../core/exact/rounding";
import type { Compared, DoseColumn, WhatIfQuestion } from "./question";

/** Several of what is compared: "4 acid values". */
const comparedNames: Record<Compared, readonly [one: string, several: string]> = {
  acid: ["acid value", "acid values"],
  assay: ["assay", "assays"],
  charge: ["base charge", "base charges"],
  base: ["base", "bases"],
};

const typedPlaces = 3;
const shownPlaces = 2;
/** As it was typed; the acid value of a mix has more decimals than anybody reads. */
const acidShown = (value: Exact): string =>
  value.decimalPlaces() > typedPlaces ? rounded(value, shownPlaces).toString() : shown(value);

/** A column, said so that it can stand beside a line: "5.6 mg KOH/g", "NQ-44", "KOH". */
export function columnName(by: Compared, { acid, base, assay, charge }: DoseColumn): string {
  switch (by) {
    case "acid":
      if (acid.lot !== undefined) return `lot ${String(acid.lot)}`;
      return acid.ffa === undefined
        ? `${acidShown(acid.value)} mg KOH/g`
        : `${acidShown(acid.ffa)} % FFA`;
    case "assay":
      return `${shown(assay)} % assay`;
    case "charge":
      return `${shown(charge)} % charge`;
    case "base":
      return base.name;
  }
}

/** The head of a column where its unit stands beside the heads: "5.6", "NQ-44", "KOH". */
export const columnHead = (by: Compared, column: DoseColumn): string => {
  const { acid, assay, charge } = column;
  if (by === "acid")
    return acid.lot === undefined ? acidShown(acid.ffa ?? acid.value) : String(acid.lot);
  return by === "assay" ? shown(assay) : by === "charge" ? shown(charge) : column.base.name;
};

const acrossNames: Record<Compared, string> = {
  acid: "acid value, mg KOH/g",
  assay: "assay of the lye, %",
  charge: "base charge, % of the oil, pure",
  base: "base",
};

/** What stands across, with its unit. */
export const acrossName = ({ by, columns }: WhatIfQuestion): string =>
  by === "acid" && columns.some(({ acid }) => acid.ffa !== undefined)
    ? "FFA, % as oleic"
    : acrossNames[by];

const counted = (count: number, [one, several]: readonly [string, string]): string =>
  `${String(count)} ${count === 1 ? one : several}`;

/** "12 batch sizes by 4 acid values". */
export const tableName = ({ sizes, columns, by }: WhatIfQuestion): string =>
  `${counted(sizes.length, ["batch size", "batch sizes"])} by ${counted(columns.length, comparedNames[by])}`;

/**
 * What the comma of "1,250" parts, by a book's own habit: "0,85" elsewhere makes it 1.25, "1,250.5" makes
 * it 1250. Where no figure tells, one that could not be in thousands does: a titre of 1250 mL is none.
 */
import { figuresIn } from "../layouts/several-figures";
import type { TablePlace } from "./find-tables";
import type { RoleId } from "./roles";
import { heldCell, type SheetCells } from "./sheet-cells";
import {
  type Commas,
  hasDecimalComma,
  hasDecimalPoint,
  hasThousandsComma,
  isEither,
} from "./typed-number";

/** Rows looked at: enough to tell, few enough to be quick. */
const most = 300;

/** So many figures are a habit, whatever else stands there. */
const enough = 3;
/** One slip among so many of the other kind. */
const slips = 3;

function signsIn(sheets: readonly SheetCells[]) {
  const found = { decimal: 0, thousands: 0, point: 0, fraction: 0 };
  for (const { values, formulas } of sheets)
    values.slice(0, most).forEach((row, at) => {
      row.forEach((value, column) => {
        if (formulas[at]?.[column] !== "") return;
        if (typeof value === "number" && !Number.isInteger(value)) found.fraction += 1;
        if (typeof value !== "string") return;
        for (const text of figuresIn(value) ?? [value]) {
          if (hasDecimalComma(text)) found.decimal += 1;
          else if (hasThousandsComma(text)) found.thousands += 1;
          else if (hasDecimalPoint(text)) found.point += 1;
        }
      });
    });
  return found;
}

/** What the figures of some sheets say by themselves. */
export function commaHabit(sheets: readonly SheetCells[]): Commas {
  const { decimal, thousands, point, fraction } = signsIn(sheets);
  if (decimal > thousands && decimal * slips >= point)
    return decimal >= enough || decimal > fraction ? "decimal" : "unsaid";
  return thousands > decimal || point >= enough ? "thousands" : "unsaid";
}

/** Of these nobody has a thousand of their usual unit. */
const neverThousands: readonly RoleId[] = [
  "titre",
  "blank",
  "meanTitre",
  "correctedTitre",
  "acidValue",
  "ffa",
  "ffaUncertainty",
  "molarity",
  "strength",
  "sampleMass",
  "sampleVolume",
  "density",
  "assay",
  "baseCharge",
];

interface Columns {
  readonly place: TablePlace;
  readonly columns: readonly { readonly column: number; readonly role: RoleId }[];
}

/** The texts in a table's columns whose comma may be either, with what they should be. */
export const eitherIn = ({ place, columns }: Columns, cells: SheetCells) =>
  columns.flatMap(({ column, role }) =>
    Array.from({ length: place.lastRow - place.firstRow + 1 }, (_, at) => {
      const { value } = heldCell(cells, place.firstRow + at, column);
      return typeof value === "string" && isEither(value)
        ? { text: value.trim(), row: place.firstRow + at, column, role }
        : undefined;
    }).filter((each) => each !== undefined),
  );

/** What a table's own columns say where no figure did. */
export const commaOfRoles = (table: Columns, cells: SheetCells): Commas =>
  eitherIn(table, cells).some(({ role }) => neverThousands.includes(role)) ? "decimal" : "unsaid";

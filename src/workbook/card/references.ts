/**
 * Figures of the printed card: each is one that stands in `Batches` or `Blends`, by reference, in the
 * person's unit. Found by the batch's number and day, so that a table sorted afterwards is the same to it.
 */
import { placesFor } from "../../core/card/shown";
import type { Form } from "../../core/card/units";
import type { BookCell, BookValue } from "../../sheet/book";
import { batchesName, blendsName } from "../tables/batch-cells";
import { countedValue, type Part } from "./amounts";

/** Cells of the sheet that hold the batch's number and its day; no day where the row has none. */
export interface Named {
  readonly batch: string;
  readonly day: string | undefined;
}

const literal = (value: BookValue): string =>
  typeof value === "string" ? `"${value.replace(/"/g, '""')}"` : String(value);

function lookedUp(table: string, heading: string, { batch, day }: Named, lot?: BookValue): string {
  const ofDay = day === undefined || lot !== undefined ? "" : `*(${table}[Date]=${day})`;
  const ofLot = lot === undefined ? "" : `*(${table}[Lot]=${literal(lot)})`;
  return `LOOKUP(2,1/((${table}[Batch]=${batch})${ofDay}${ofLot}),${table}[${heading}])`;
}

const found = ({ source: { heading, lot } }: Part, named: Named): string =>
  lookedUp(lot === undefined ? batchesName : blendsName, heading, named, lot);

/** What stands under a heading of the batch's own row. */
export const ofRow = (heading: string, named: Named, format?: string): BookCell => ({
  formula: `=${lookedUp(batchesName, heading, named)}`,
  ...(format === undefined ? {} : { format }),
});

const formatTo = (places: number): string => (places === 0 ? "0" : `0.${"0".repeat(places)}`);

/**
 * One figure, or pounds and the ounces over in a cell each, as `core/card/shown.ts` has them. The units
 * stand in the formats, so that a figure stays a figure; of one in large type beside it, since no cell is
 * as wide as both.
 */
export function figureCells(
  part: Part,
  form: Form,
  named: Named,
  isLarge: boolean,
): readonly BookCell[] {
  const { times } = part.source;
  const value = found(part, named);
  const scaled = times.eq(form.per)
    ? value
    : `${value}${times.eq(1) ? "" : `*${times.toString()}`}${form.per.eq(1) ? "" : `/${form.per.toString()}`}`;
  if (form.look === "pounds and ounces") {
    const ounces = `ROUND(${scaled},1)`;
    const pounds = `INT(${ounces}/16)`;
    return [
      { formula: `=${pounds}`, format: '0" lb"' },
      { formula: `=${ounces}-16*${pounds}`, format: '0.0" oz"' },
    ];
  }
  const places = placesFor(countedValue(part).div(form.per));
  return isLarge
    ? [{ formula: `=${scaled}`, format: formatTo(places) }, { value: form.unit }]
    : [{ formula: `=${scaled}`, format: `${formatTo(places)}" ${form.unit}"` }];
}

/** What a cell holds, or would hold, as text for a preview. A decimal point, no thousands signs. */
import { serialsEnd, timeOfSerial } from "../../sheet/serial-days";
import { exact, hundred } from "../../core/exact/exact";
import { rounded, shown } from "../../core/exact/rounding";
import type { CellContent, Content } from "../../sheet/port";

const dateText = (days: number): string =>
  new Date(timeOfSerial(Math.floor(days))).toISOString().slice(0, 10);

/** Years 1900 to 9999, as far as a spreadsheet counts. */
const isDate = (days: number): boolean => days >= 1 && days < serialsEnd;

function numberText(value: number, format: string | undefined): string {
  if (format === "yyyy-mm-dd" && isDate(value)) return dateText(value);
  const places = /^0(?:\.(0+))?$/.exec(format ?? "");
  const figure = exact(value);
  // never fewer digits than were typed: what would be lost must not be hidden
  return places
    ? figure.toFixed(Math.max(places[1]?.length ?? 0, figure.decimalPlaces()))
    : shown(figure);
}

export function valueText(value: CellContent, format?: string): string {
  if (typeof value === "object") return value.error;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "number" ? numberText(value, format) : value;
}

/** The places a number format shows: so many always, so many more where there are figures for them. */
const placesOf = /^0(?:\.(0*)(#*))?(%?)$/;

/** A value as its cell will look, rounded as the cell rounds it. */
function looks(value: CellContent, format = ""): string {
  const places = placesOf.exec(format);
  if (typeof value !== "number" || places === null) return valueText(value, format);
  const [, least = "", more = "", percent = ""] = places;
  const figure = percent === "" ? exact(value) : exact(value).times(hundred);
  const most = rounded(figure, least.length + more.length);
  return `${most.toFixed(Math.max(least.length, most.decimalPlaces()))}${percent}`;
}

/** What would be there. `format` is how the column is usually shown. */
export function contentText(content: Content, format?: string): string {
  if (content.kind === "keep") return "";
  return content.kind === "formula" ? content.formula : looks(content.value, format);
}

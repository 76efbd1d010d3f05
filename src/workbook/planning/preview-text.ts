/** What a cell holds, or would hold, as text for a preview. A decimal point, no thousands signs. */
import { serialsEnd, timeOfSerial } from "../../sheet/serial-days";
import { exact } from "../../core/exact/exact";
import { shown } from "../../core/exact/rounding";
import type { CellContent, Content } from "../../sheet/port";

const dateText = (days: number): string =>
  new Date(timeOfSerial(Math.floor(days))).toISOString().slice(0, 10);

/** Years 1900 to 9999, as far as a spreadsheet counts. */
const isDate = (days: number): boolean => days >= 1 && days < serialsEnd;

function numberText(value: number, format: string | undefined): string {
  if (format === "yyyy-mm-dd" && isDate(value)) return dateText(value);
  const places = /^0(?:\.(0+))?$/.exec(format ?? "");
  const figure = exact(value);
  // Never fewer digits than were typed: a preview must not hide what would be written.
  return places
    ? figure.toFixed(Math.max(places[1]?.length ?? 0, figure.decimalPlaces()))
    : shown(figure);
}

export function valueText(value: CellContent, format?: string): string {
  if (typeof value === "object") return value.error;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "number" ? numberText(value, format) : value;
}

/** What would be there. `format` is how the column is usually shown. */
export function contentText(content: Content, format?: string): string {
  if (content.kind === "keep") return "";
  return content.kind === "formula" ? content.formula : valueText(content.value, format);
}

/** How a raw value looks under a number format, as the grid draws it. */
import { numfmt } from "@univerjs/core";
import type { GivenCell } from "./cells";

/** Figures without a format: what fits, as a spreadsheet shows it. */
const general = "General";

export function shownValue(value: GivenCell, format: string = general): string {
  if (value === null) return "";
  if (typeof value === "object") return value.basicValue;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") return value;
  return numfmt.format(format, value);
}

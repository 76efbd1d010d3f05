/** Values as files can hold them; one that cannot be held is refused with the cell's name. */
import { isoToSerial } from "../dates";
import { limits } from "../limits";
import { refuse } from "../problem";
import type { NewValue } from "./edits";
import type { StoredValue } from "./wanted";

/** The errors of ECMA-376 part 1, 18.17.3. Files hold newer ones (#SPILL!, #CALC!) as the last. */
const errors = ["#DIV/0!", "#N/A", "#NAME?", "#NULL!", "#NUM!", "#REF!", "#VALUE!"];

export function storedValue(value: NewValue, cell: string, dates: 1900 | 1904): StoredValue {
  if (typeof value === "number") {
    return Number.isFinite(value) ? value + 0 : refuse({ code: "not-a-number", cell });
  }
  if (typeof value === "string") {
    return value.length <= limits.text ? value : refuse({ code: "text-too-long", cell });
  }
  if (typeof value === "boolean") return value;
  if ("error" in value) {
    return { error: errors.find((known) => known === value.error.toUpperCase()) ?? "#VALUE!" };
  }
  const serial = isoToSerial(value.date, dates);
  return serial ?? refuse({ code: "not-a-date", cell, given: value.date });
}

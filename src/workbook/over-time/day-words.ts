/** A day of the spreadsheet in words: 27 Oct 2026. */
import { timeOfSerial } from "../../sheet/serial-days";

const months = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");

/** @example dayInWords(46322) // "27 Oct 2026" */
export function dayInWords(serial: number): string {
  const day = new Date(timeOfSerial(Math.floor(serial)));
  return `${String(day.getUTCDate())} ${months[day.getUTCMonth()] ?? ""} ${String(day.getUTCFullYear())}`;
}

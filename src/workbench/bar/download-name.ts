/** The name of a saved file that goes into the downloads: the workbook's own, and when it was saved. */
import { partsOfName } from "../keeping/own-name";

const two = (figure: number): string => String(figure).padStart(2, "0");

/** logbook.xlsx is logbook 2026-11-30 1432.xlsx, and that is logbook 2026-12-01 0905.xlsx the next day. */
export function downloadName(name: string, now: Date): string {
  const [own, ending] = partsOfName(name);
  const day = `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `${own === "" ? "workbook" : own} ${day} ${two(now.getHours())}${two(now.getMinutes())}${ending}`;
}

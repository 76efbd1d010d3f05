/** The name of a saved file that goes into the downloads: the workbook's own, and when it was saved. */

/** What an earlier save put behind the name, and what a browser puts behind one that is there already. */
const savedBefore = /( \d{4}-\d\d-\d\d \d{4}( ?\(\d{1,3}\))?)+$/;

const two = (figure: number): string => String(figure).padStart(2, "0");

/** logbook.xlsx is logbook 2026-11-30 1432.xlsx, and that is logbook 2026-12-01 0905.xlsx the next day. */
export function downloadName(name: string, now: Date): string {
  const dot = name.lastIndexOf(".");
  const [stem, ending] = dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, ""];
  const own = stem.replace(savedBefore, "");
  const day = `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `${own === "" ? "workbook" : own} ${day} ${two(now.getHours())}${two(now.getMinutes())}${ending}`;
}

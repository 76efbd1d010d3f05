/** What a workbook is called, however often it was saved into the downloads. */

/** What an earlier save put behind the name, and what a browser puts behind one that is there already. */
const savedBefore = /( \d{4}-\d\d-\d\d \d{4}( ?\(\d{1,3}\))?)+$/;

/** @returns its own part, and the ending with its point */
export function partsOfName(name: string): readonly [own: string, ending: string] {
  const dot = name.lastIndexOf(".");
  const [stem, ending] = dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, ""];
  return [stem.replace(savedBefore, ""), ending];
}

/** logbook 2026-11-30 1432.xlsx is logbook.xlsx. */
export const ownName = (name: string): string => partsOfName(name).join("");

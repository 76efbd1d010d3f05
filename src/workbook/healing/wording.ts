/** What the pane says about cells that wait for our functions. */
import type { Fault } from "../../sheet/port";
import { address } from "../../sheet/address";
import type { Healing } from "./heal";
import type { Search } from "./search";
import type { Unanswered } from "./unanswered";

const cellCount = (count: number): string => (count === 1 ? "1 cell" : `${count} cells`);

const firstOf = (cells: readonly Unanswered[]): string =>
  cells[0] ? address(cells[0].block) : "nowhere";

/** What keeps some cells from being written, one sentence for each cause. */
export const causes = ({ locked, mixed, isWhole }: Search): string[] => [
  ...(locked.length > 0
    ? [
        `${cellCount(locked.length)} on a protected sheet, first ${firstOf(locked)}: take the protection off, then ask again.`,
      ]
    : []),
  ...(mixed.length > 0
    ? [
        `${cellCount(mixed.length)} in a table's column of several formulas, first ${firstOf(mixed)}: go to each, press F2, then Enter.`,
      ]
    : []),
  ...(isWhole ? [] : ["The workbook is large, and only its first 400000 cells were looked at."]),
];

/** Undefined when no cell waits. */
export function foundSentence(search: Search): string | undefined {
  const all = [...search.mendable, ...search.locked, ...search.mixed];
  if (all.length === 0) return undefined;
  const shows = all.length === 1 ? "shows" : "show";
  return `${cellCount(all.length)} with TITRE functions ${shows} #NAME?, first ${firstOf(all)}. They were worked out before Titrebook was loaded; writing the same formula again puts that right.`;
}

export function healedSentence({ asked, later, left, tries }: Healing): string {
  const still = Math.max(0, left.mendable.length - later);
  if (still === 0 && later > 0) {
    return `${cellCount(asked)} answer now. ${cellCount(later)} more to ask: press Ask again.`;
  }
  if (still === 0) return asked === 1 ? "The cell answers now." : `All ${asked} cells answer now.`;
  const answered = Math.max(0, asked - still);
  return `${answered} of ${asked} answer now. After ${tries} tries ${firstOf(left.mendable)} still shows #NAME?: look for another unknown name in it, or close the workbook and open it again.`;
}

const faults: Partial<Record<Fault["code"], string>> = {
  "read-only": "This workbook takes no changes: save a copy under another name and open that.",
  "sheet-protected": "A sheet is protected: take its protection off, then ask again.",
  "being-edited": "A cell is being edited: finish it with Enter, then ask again.",
  busy: "The spreadsheet is busy with something else: wait until it is done, then ask again.",
  "too-large":
    "These are more cells than the spreadsheet takes at once: ask in the program on a computer.",
  "no-answer": "The spreadsheet did not answer in time: wait a moment, then ask again.",
};

export const healingFault = ({ code }: Fault): string =>
  faults[code] ?? "The spreadsheet reported an error, and nothing was changed: ask again.";

/**
 * The sentences about a workbook that cannot be read or written: what happened and what to do, 6 to
 * 200 characters each. What was typed stays in the pane's draft whatever happens, and the sentences say so.
 */
import { andList } from "../../sheet/and-list";
import type { Decoration, Fault, FaultCode } from "../../sheet/port";

const longestName = 40;

/** A name out of a workbook, fit for the middle of a sentence. */
export const named = (name: string): string => {
  const flat = name.replace(/\s+/g, " ").trim();
  return flat.length > longestName ? `${flat.slice(0, longestName)}…` : flat;
};

const kept = "Nothing was written and what you typed is kept";

const wording: Record<FaultCode, (about: string) => string> = {
  "read-only": () =>
    `This workbook takes no changes. ${kept}: save a copy under another name, open it and write there.`,
  "sheet-protected": (sheet) =>
    `${sheet ? `The sheet ${sheet}` : "The sheet"} is protected. ${kept}: take its protection off, then try again.`,
  "workbook-protected": () =>
    `The workbook is protected against new sheets. ${kept}: take that protection off, then try again.`,
  "table-filtered": (table) =>
    `${table ? `The table ${table}` : "The table"} is filtered, so a new row could be hidden. ${kept}: clear the filter, then try again.`,
  "target-not-empty": (address) =>
    `${address || "A cell to be written"} is not empty. ${kept}: look at it, then try again.`,
  "name-taken": (name) =>
    `${name ? `The name ${name}` : "A name"} is used for something else in this workbook. ${kept}: rename that, then try again.`,
  "being-edited": () =>
    `A cell is being edited. ${kept}: finish it with Enter or leave it with Escape, then try again.`,
  busy: () =>
    `The spreadsheet is busy with something else. ${kept}: wait until it is done, then try again.`,
  "too-large": () =>
    `This is more at once than the spreadsheet takes here. ${kept}: try it in the program on a computer, not in a browser.`,
  "not-undoable": () =>
    `The spreadsheet could not keep an undo for this. ${kept}: close the panes of other add-ins, then try again.`,
  "no-answer": () =>
    "The spreadsheet did not answer in time. What you typed is kept: wait a moment, then try again.",
  "half-done": () =>
    "The spreadsheet stopped half-way, and some cells may be written: undo (Ctrl+Z) until it is as before, then try again. What you typed is kept.",
  "not-offered": (what) =>
    `This spreadsheet does not offer ${what || "what is needed here"}. ${kept}.`,
  failed: () => `The spreadsheet reported an error. ${kept}: try again in a moment.`,
};

const decorations: Record<Exclude<Decoration, "select">, string> = {
  "set-width": "column widths",
  "freeze-rows": "headings that stay in sight",
  "add-note": "notes beside cells",
  "offer-words": "words to choose from",
  "add-chart": "charts",
  "print-area": "how it is printed",
};

/** What was left out that no figure needs; undefined when nothing was that a person would miss. */
export function missingSentence(missing: readonly Decoration[]): string | undefined {
  const words = missing.flatMap((each) => (each === "select" ? [] : [decorations[each]]));
  return words.length === 0
    ? undefined
    : `The spreadsheet did not do this part, which no figure needs: ${andList(words)}.`;
}

/** The sentence for a fault. */
export const faultSentence = ({ code, about }: Fault): string => wording[code](named(about));

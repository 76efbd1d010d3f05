/** The report of a copy in sentences, for the pane, the command and the sheet in the copy itself. */
import { counted } from "../../sheet/counted";
import type { Left, ShareReport } from "./report";

const listed = (names: readonly string[]): string =>
  names.length < 2
    ? names.join("")
    : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1] ?? ""}`;

/** Names are given up to a number; the rest are counted. */
function some(names: readonly string[], most: number): string {
  if (names.length <= most) return listed(names);
  return `${names.slice(0, most).join(", ")} and ${String(names.length - most)} more`;
}

const on = (sheets: readonly string[]): string =>
  sheets.length === 0 ? "" : ` on ${some(sheets, 6)}`;

function partnerWords(report: ShareReport): string[] {
  const { formulas, sentences, sheets, helperCells, workings, unfilled } = report;
  const lines = [
    formulas === 0
      ? "No TITRE formula could be written as a plain one."
      : `${counted(formulas, "formula")}${on(sheets)} now ${formulas === 1 ? "calls" : "call"} plain functions that every spreadsheet program has.`,
  ];
  if (workings !== undefined) {
    lines.push(
      `${counted(helperCells, "cell")} of steps in between, on the sheet ${workings} that was added.`,
    );
  }
  if (sentences > 0) {
    const [are, they] = sentences === 1 ? ["is", "it was"] : ["are", "they were"];
    lines.push(
      `${counted(sentences, "answer")} ${are} kept as ${they} and will not follow a change, since no plain formula can say ${sentences === 1 ? "it" : "them"}.`,
    );
  }
  if (unfilled.length > 0) {
    lines.push(`A new row does not fill these columns by itself: ${some(unfilled, 8)}.`);
  }
  return lines;
}

/** What was done, a sentence each; what was left is told by leftWords. */
export function reportWords(report: ShareReport): string[] {
  const { kind, formulas, sentences, left, sheets, webExtensions } = report;
  const lines: string[] = [];
  if (formulas + sentences + left.length === 0) {
    lines.push(
      kind === "partner"
        ? "Nothing to convert: no formula in the file calls TITRE. The copy is the same."
        : "Nothing to convert: the file has no formulas. The copy is the same.",
    );
  } else if (kind === "numbers") {
    lines.push(`${counted(formulas, "formula")}${on(sheets)} dropped, and every figure kept.`);
  } else lines.push(...partnerWords(report));
  if (webExtensions > 0) lines.push("The file no longer opens the pane of an add-in.");
  if (left.length > 0) {
    const wholly = left.every(({ isInPart }) => !isInPart);
    lines.push(
      `${counted(left.length, "formula")} not ${wholly ? "" : "wholly "}converted, each with its reason:`,
    );
  }
  return lines;
}

/** @example leftWords({ cell: "Log!C2", reason: "...", isInPart: false }) // "Log!C2, left as it is: ..." */
export const leftWords = ({ cell, reason, isInPart }: Left): string =>
  `${cell}, ${isInPart ? "only in part" : "left as it is"}: ${reason}.`;

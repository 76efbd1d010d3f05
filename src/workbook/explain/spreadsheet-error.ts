/** Why a cell shows an error that none of our functions gives: what it reads, or what the error means. */
import { isProblem } from "../../core/problem/problem";
import { readFormula } from "../../sheet/formula/read";
import type { Reference } from "../../sheet/formula/tree";
import { nodesOf } from "../../sheet/formula/walk";
import type { Lookup } from "./explain";

const meanings = new Map([
  ["#DIV/0!", "Something is divided by 0, or by a cell that is empty."],
  ["#N/A", "A value that it needs is not there, or was not found."],
  ["#NAME?", "It uses a name or a function that is not known here."],
  ["#NULL!", "Two of its areas have no cell in common."],
  ["#NUM!", "A figure in it is too large, too small or not allowed."],
  ["#REF!", "It refers to a cell that is not there any more."],
  ["#SPILL!", "Its answer needs cells in which something stands."],
  [
    "#VALUE!",
    "It was given something else than it can work with, for example a word for a figure.",
  ],
]);

const unknown = "The spreadsheet cannot work it out.";

const errorIn = (rows: unknown[][] | undefined): string | undefined => {
  for (const value of rows?.flat() ?? []) {
    if (typeof value !== "object" || value === null || !("basicValue" in value)) continue;
    if (typeof value.basicValue === "string") return value.basicValue;
  }
  return undefined;
};

/** The first thing the formula reads in which there is an error. */
function errorRead(text: string, lookup: Lookup): string | undefined {
  const formula = readFormula(text);
  if (isProblem(formula)) return undefined;
  const references = [...nodesOf(formula.tree)].filter(
    (node): node is Reference => node.kind === "reference" && node.shape !== "lost",
  );
  for (const reference of references) {
    const found = errorIn(lookup(reference.text));
    if (found !== undefined) return `It reads ${reference.text}, where ${found} stands.`;
  }
  return undefined;
}

/**
 * One sentence.
 * @param error as the cell shows it: #DIV/0!
 * @param formula with its equals sign; "" where the error itself was put into the cell
 */
export function spreadsheetReason(error: string, formula: string, lookup: Lookup): string {
  if (formula === "") {
    return `${error} itself was put into this cell, and nothing is worked out: type over it.`;
  }
  return errorRead(formula, lookup) ?? meanings.get(error) ?? unknown;
}

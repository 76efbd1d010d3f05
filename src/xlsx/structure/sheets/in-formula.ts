/** A sheet in the formulas of a file: another name for it, or none. */
import { isProblem } from "../../../core/problem/problem";
import { readFormula } from "../../../sheet/formula/read";
import { sheetOf, targetOf } from "../../../sheet/formula/reference";
import { type Replacement, splice } from "../../../sheet/formula/splice";
import type { Reference } from "../../../sheet/formula/tree";
import { nodesOf } from "../../../sheet/formula/walk";
import { isPlainSheetName } from "../../../sheet/sheet-prefix";
import { refuse } from "../../problem";
import { sheetsIn } from "./sheets-in";

export const isSameSheet = (a: string | undefined, b: string): boolean =>
  a?.toLowerCase() === b.toLowerCase();

/** One sheet, or a range of them, before an address. */
function sheetsPrefix(first: string, last?: string): string {
  const both = last === undefined ? first : `${first}:${last}`;
  const isPlain = isPlainSheetName(first) && (last === undefined || isPlainSheetName(last));
  return isPlain ? both : `'${both.replaceAll("'", "''")}'`;
}

/** @example renamedIn("SUM(Log!A:A)", "Log", "Old log") // "SUM('Old log'!A:A)" */
export function renamedIn(formula: string, from: string, to: string): string {
  const name = (given: string) => (isSameSheet(given, from) ? to : given);
  const changes: Replacement[] = [];
  for (const { start, end, workbook, first, last } of sheetsIn(`=${formula}`)) {
    if (workbook !== undefined) continue;
    if (!isSameSheet(first, from) && !isSameSheet(last, from)) continue;
    const text = sheetsPrefix(name(first), last === undefined ? undefined : name(last));
    changes.push({ start, end, text });
  }
  return splice(`=${formula}`, changes).slice(1);
}

/** A sheet that goes. */
export interface Going {
  readonly sheet: string;
  /** All sheets in their order, itself among them. */
  readonly order: readonly string[];
  /** Tables on it, in small letters. */
  readonly tables: ReadonlySet<string>;
}

/** The range of sheets without it; undefined where none is left. */
function shrunk(first: string, last: string, { sheet, order }: Going): string | undefined {
  const at = (name: string) => order.findIndex((each) => isSameSheet(each, name));
  const [from, to] = [at(first), at(last)];
  if (from < 0 || to < 0) return undefined;
  const between = order.slice(Math.min(from, to), Math.max(from, to) + 1);
  const left = between.filter((name) => !isSameSheet(name, sheet));
  const [one] = left;
  const other = left.at(-1);
  if (one === undefined || other === undefined) return undefined;
  return `${sheetsPrefix(one, left.length > 1 ? other : undefined)}!`;
}

function without(reference: Reference, going: Going): string | undefined {
  const { text } = reference;
  const sheets = sheetOf(reference);
  if (sheets?.workbook !== undefined) return undefined;
  const { first, last } = sheets ?? {};
  if (last !== undefined && first !== undefined) {
    if (!isSameSheet(first, going.sheet) && !isSameSheet(last, going.sheet)) return undefined;
    const prefix = shrunk(first, last, going);
    return prefix === undefined ? "#REF!" : prefix + text.slice(text.lastIndexOf("!") + 1);
  }
  if (first !== undefined && isSameSheet(first, going.sheet)) return "#REF!";
  const target = targetOf(reference);
  const table =
    target.kind === "structured" ? target.table : target.kind === "name" ? target.name : "";
  return first === undefined && going.tables.has(table.toLowerCase()) ? "#REF!" : undefined;
}

/** Several areas, as a name may stand for them, are read in brackets alone. */
const forms = (formula: string) => [`=${formula}`, `=(${formula})`];

/** @example lostIn("A1+Log!B2", { sheet: "Log", ... }) // "A1+#REF!" */
export function lostIn(formula: string, going: Going): string {
  for (const form of forms(formula)) {
    const read = readFormula(form);
    if (isProblem(read)) continue;
    const changes: Replacement[] = [];
    for (const node of nodesOf(read.tree)) {
      const now = node.kind === "reference" ? without(node, going) : undefined;
      if (now !== undefined) changes.push({ start: node.start, end: node.end, text: now });
    }
    const offset = form.indexOf(formula);
    return splice(form, changes).slice(offset, offset === 1 ? undefined : -1);
  }
  return refuse({ code: "unreadable-formula" });
}

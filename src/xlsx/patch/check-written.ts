/** What a patch wrote, read back from the new bytes: cells, columns of tables, names. */
import type { Workbook } from "../model";
import { refuse } from "../problem";
import { isAsMeant, readAgain, refuseOtherFormulas, type MeantFormula } from "../read-back";
import type { Draft } from "./draft";
import type { SheetDraft } from "./sheet-draft";
import { keepsFormula, type Wanted } from "./wanted";

function meantBy({ row, column, plan }: Wanted): MeantFormula[] {
  if (plan.kind !== "formula") return [];
  const { meant, array } = plan;
  return [{ row, column, ...meant, array }];
}

type Known = Map<string, boolean>;

function checkCells(sheet: SheetDraft, after: Workbook, known: Known): void {
  const { name, wanted, now: before } = sheet;
  if (wanted.isEmpty) return;
  const found = after.sheets.find((each) => each.name === name);
  if (!found) return refuse({ code: "not-as-meant", place: name });
  const formulas = wanted.rowNumbers().flatMap((row) => wanted.inRow(row).flatMap(meantBy));
  const isReplaced = (place: { row: number; column: number }): boolean => {
    const change = wanted.get(place);
    return change !== undefined && !keepsFormula(change);
  };
  refuseOtherFormulas({ sheet: name, formulas, isReplaced, before }, found, known);
}

/** Columns that were added to a table, and their formulas. */
function checkTables({ tables }: SheetDraft, after: Workbook, known: Known): void {
  for (const { name, columns } of tables) {
    const wanted = columns.filter(({ formula }) => formula !== undefined);
    if (wanted.length === 0) continue;
    const found = after.sheets.flatMap((each) => each.tables).find((each) => each.name === name);
    for (const { heading, formula } of wanted) {
      const now = found?.columns.find((each) => each.heading === heading)?.formula;
      if (formula && isAsMeant(formula.meant, now, known)) continue;
      refuse({ code: "not-as-meant", place: `${name}[${heading}]` });
    }
  }
}

function checkNames({ names }: Draft, after: Workbook, known: Known): void {
  for (const { name, refersTo } of names) {
    const found = after.names.find((each) => each.name === name && each.sheet === undefined);
    const meant = refersTo.startsWith("=") ? refersTo : `=${refersTo}`;
    if (!isAsMeant({ formula: meant }, found?.refersTo, known)) {
      refuse({ code: "not-as-meant", place: name });
    }
  }
}

/** The new file as a workbook, once it is known to hold what was meant. */
export function checkWritten(draft: Draft, bytes: Uint8Array): Workbook {
  const after = readAgain(bytes, draft.opened.file);
  const known: Known = new Map();
  for (const sheet of draft.all()) {
    checkCells(sheet, after, known);
    checkTables(sheet, after, known);
  }
  checkNames(draft, after, known);
  return after;
}

/** What a copy was meant to hold, formula by formula, for the reading back of its bytes. */
import type { Area, Place } from "../../sheet/area";
import { formulaFromFile } from "../../xlsx/formulas/from-file";
import { limits } from "../../xlsx/limits";
import type { Sheet, Workbook } from "../../xlsx/model";
import type { Wanted } from "../../xlsx/patch/wanted";
import { keepsFormula } from "../../xlsx/patch/wanted";
import { refuse } from "../../xlsx/problem";
import { isAsMeant, type MeantFormula, readAgain, refuseOtherFormulas } from "../../xlsx/read-back";

interface SheetLedger {
  readonly formulas: MeantFormula[];
  /** Cells whose own formula goes. */
  readonly replaced: Set<number>;
  isEmptied: boolean;
}

/** A formula that stands in no cell. */
interface Elsewhere {
  /** How a sentence names its place. */
  readonly place: string;
  readonly text: string;
  readonly find: (after: Workbook) => string | undefined;
}

const keyOf = ({ row, column }: Place): number => row * limits.columns + column;

export class Ledger {
  private readonly sheets = new Map<string, SheetLedger>();
  private readonly elsewhere: Elsewhere[] = [];

  private on(sheet: string): SheetLedger {
    const known = this.sheets.get(sheet) ?? { formulas: [], replaced: new Set(), isEmptied: false };
    this.sheets.set(sheet, known);
    return known;
  }

  /** A formula, as files hold it, that a cell gets. */
  formula(sheet: string, { row, column }: Place, text: string, array?: Area): void {
    const { formulas, replaced } = this.on(sheet);
    formulas.push({ row, column, formula: formulaFromFile(text), array });
    replaced.add(keyOf({ row, column }));
  }

  /** A cell written anew. */
  wanted(sheet: string, wanted: Wanted): void {
    if (wanted.plan.kind === "formula") {
      this.formula(sheet, wanted, wanted.plan.formula, wanted.plan.array);
    } else if (!keepsFormula(wanted)) this.on(sheet).replaced.add(keyOf(wanted));
  }

  /** Every formula of a sheet goes. */
  emptied(sheet: string): void {
    this.on(sheet).isEmptied = true;
  }

  other(place: string, text: string, find: Elsewhere["find"]): void {
    this.elsewhere.push({ place, text, find });
  }

  /** Refuses bytes in which a formula is not what was meant. `before` reads a sheet as it was. */
  check(bytes: Uint8Array, before: (sheet: string) => Sheet | undefined): void {
    const after = readAgain(bytes);
    const known = new Map<string, boolean>();
    for (const [sheet, { formulas, replaced, isEmptied }] of this.sheets) {
      const now = after.sheets.find(({ name }) => name === sheet);
      if (!now) return refuse({ code: "not-as-meant", place: sheet });
      const isReplaced = (place: Place) => replaced.has(keyOf(place));
      const was = isEmptied ? undefined : before(sheet);
      refuseOtherFormulas({ sheet, formulas, isReplaced, before: was }, now, known);
    }
    for (const { place, text, find } of this.elsewhere) {
      const meant = { formula: formulaFromFile(text), table: undefined };
      if (!isAsMeant(meant, find(after), known)) refuse({ code: "not-as-meant", place });
    }
  }
}

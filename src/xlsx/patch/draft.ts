/** What one call of edits adds up to, gathered and checked before a single part is changed. */
import type { Sheet, Workbook } from "../model";
import { refuse } from "../problem";
import type { Package } from "../package/package";
import { type ListedSheet, readWorkbookPart } from "../read/workbook-part";
import { callsAreArrays } from "./call-form";
import { type NewName, refuseName } from "./defined-names";
import { addSheet, refuseSheetName } from "./new-sheet";
import type { AddIn } from "./pane";
import { SheetDraft, type TableDraft } from "./sheet-draft";

const folded = (name: string): string => name.toLowerCase();

export class Draft {
  readonly file: Package;
  readonly names: NewName[] = [];
  isWorkedOutOnOpening = false;
  pane: AddIn | undefined;
  private readonly sheets = new Map<string, SheetDraft>();
  private readonly takenNames: Set<string>;
  private nextSheetId: number;

  private readonly callsAreArrays: boolean;

  constructor(readonly opened: Workbook) {
    this.file = opened.file.fresh();
    this.callsAreArrays = callsAreArrays(opened);
    const { sheets } = readWorkbookPart(this.file);
    for (const [index, listed] of sheets.entries()) {
      this.sheets.set(folded(listed.name), this.sheetDraft(listed, opened.sheets[index]));
    }
    this.nextSheetId = Math.max(0, ...sheets.map(({ id }) => id)) + 1;
    this.takenNames = new Set([
      ...opened.names.map(({ name }) => folded(name)),
      ...opened.sheets.flatMap(({ tables }) => tables.map(({ name }) => folded(name))),
    ]);
  }

  private sheetDraft(listed: ListedSheet, now: Sheet | undefined): SheetDraft {
    return new SheetDraft(listed, now, this.callsAreArrays);
  }

  get workbookPart(): string {
    return readWorkbookPart(this.file).part;
  }

  all(): SheetDraft[] {
    return [...this.sheets.values()];
  }

  sheet(name: string): SheetDraft {
    const found = this.sheets.get(folded(name)) ?? refuse({ code: "no-sheet", name });
    if (found.listed.kind !== "cells") refuse({ code: "no-cells", sheet: name });
    return found;
  }

  table(name: string): TableDraft {
    const tables = this.all().flatMap((sheet) => sheet.tables);
    const found = tables.find((table) => folded(table.name) === folded(name));
    return found ?? refuse({ code: "no-table", name });
  }

  addSheet(name: string): void {
    refuseSheetName(name, new Set(this.sheets.keys()));
    const listed = addSheet(this.file, readWorkbookPart(this.file), name, this.nextSheetId);
    this.nextSheetId += 1;
    this.sheets.set(folded(name), this.sheetDraft(listed, undefined));
  }

  /** A name nothing has yet, neither table nor defined name. */
  takeName(name: string, kind: "table" | "defined"): void {
    refuseName(name, kind, this.takenNames);
    this.takenNames.add(folded(name));
  }
}

/** Takes the edits in, one by one, checking each; no part changes yet but for sheets that are added. */
import { isOnSheet, named } from "../cell-address";
import { limits } from "../limits";
import type { Area } from "../../sheet/area";
import { refuse } from "../problem";
import { refuseWidth } from "./columns";
import type { Draft } from "./draft";
import type { Edit } from "./edits";
import { addColumn, addRows, growTable, refuseOverlap, takeFormulas } from "./table/grow";
import { CellPlanner } from "./plan-cell";
import type { SheetDraft, TableDraft } from "./sheet-draft";

type EditOf<Kind extends Edit["do"]> = Extract<Edit, { do: Kind }>;

function refuseOutside(sheet: string, { row, column, rows, columns }: Area): void {
  const isSound = rows >= 1 && columns >= 1 && isOnSheet(row, column);
  if (isSound && isOnSheet(row + rows - 1, column + columns - 1)) return;
  refuse({ code: "outside-sheet", cell: named(sheet, row, column) });
}

function addTable(draft: Draft, edit: EditOf<"add-table">): void {
  const sheet = draft.sheet(edit.sheet);
  refuseOutside(edit.sheet, edit.area);
  draft.takeName(edit.name, "table");
  const table: TableDraft = {
    name: edit.name,
    sheet,
    area: edit.area,
    hasTotals: false,
    columns: [],
    before: undefined,
    formulas: new Map(),
  };
  takeFormulas(table, edit.formulas);
  refuseOverlap(table, edit.area);
  sheet.tables.push(table);
}

function addNote(sheet: SheetDraft, { row, column, text }: EditOf<"add-note">): void {
  refuseOutside(sheet.name, { row, column, rows: 1, columns: 1 });
  const isThere = [...(sheet.now?.notes ?? []), ...sheet.notes].some(
    (note) => note.row === row && note.column === column,
  );
  const cell = named(sheet.name, row, column);
  if (isThere) refuse({ code: "note-there", cell });
  sheet.notes.push({ row, column, text });
}

function printSetup(draft: Draft, edit: EditOf<"print-setup">): void {
  const sheet = draft.sheet(edit.sheet);
  const { area, repeatRows, repeatColumns, landscape, fitToWidth, secondPage } = edit;
  if (area) refuseOutside(sheet.name, area);
  if (repeatRows) refuseOutside(sheet.name, { ...repeatRows, column: 0, columns: 1 });
  if (repeatColumns) refuseOutside(sheet.name, { ...repeatColumns, row: 0, rows: 1 });
  if (secondPage !== undefined) {
    refuseOutside(sheet.name, { row: secondPage, column: 0, rows: 1, columns: 1 });
  }
  sheet.print = {
    ...sheet.print,
    ...(area ? { area } : {}),
    ...(repeatRows ? { repeatRows } : {}),
    ...(repeatColumns ? { repeatColumns } : {}),
    ...(landscape === undefined ? {} : { landscape }),
    ...(fitToWidth === undefined ? {} : { fitToWidth }),
    ...(secondPage === undefined ? {} : { secondPage }),
  };
}

function setWidth(sheet: SheetDraft, { column, characters }: EditOf<"set-width">): void {
  refuseOutside(sheet.name, { row: 0, column, rows: 1, columns: 1 });
  refuseWidth(characters);
  sheet.widths.set(column, characters);
}

function setHeight(sheet: SheetDraft, edit: EditOf<"set-height">): void {
  const { row, points, isFitted = false } = edit;
  refuseOutside(sheet.name, { row, column: 0, rows: 1, columns: 1 });
  if (!(points >= 0 && points <= limits.height)) refuse({ code: "bad-height", given: points });
  sheet.heights.set(row, { points, isFitted });
}

export class Gatherer {
  private readonly planners = new Map<SheetDraft, CellPlanner>();

  constructor(private readonly draft: Draft) {}

  private planner(sheet: SheetDraft): CellPlanner {
    const known = this.planners.get(sheet);
    if (known) return known;
    const made = new CellPlanner(sheet, this.draft.opened.dates);
    this.planners.set(sheet, made);
    return made;
  }

  take(edit: Edit): void {
    const { draft } = this;
    switch (edit.do) {
      case "set-cell":
        return this.planner(draft.sheet(edit.sheet)).plan(edit);
      case "add-column": {
        const table = draft.table(edit.table);
        return addColumn(table, edit, this.planner(table.sheet));
      }
      case "add-rows": {
        const table = draft.table(edit.table);
        return addRows(table, edit, this.planner(table.sheet));
      }
      case "grow-table":
        return growTable(draft.table(edit.table), edit.area, edit.formulas);
      case "add-sheet":
        return draft.addSheet(edit.name);
      case "add-table":
        return addTable(draft, edit);
      case "work-out-on-opening":
        draft.isWorkedOutOnOpening = true;
        return;
      case "open-pane":
        draft.pane = edit;
        return;
      case "define-name":
        draft.takeName(edit.name, "defined");
        draft.names.push(edit);
        return;
      case "set-width":
        return setWidth(draft.sheet(edit.sheet), edit);
      case "set-height":
        return setHeight(draft.sheet(edit.sheet), edit);
      case "freeze": {
        const { rows, columns } = edit;
        refuseOutside(edit.sheet, { row: rows, column: columns, rows: 1, columns: 1 });
        draft.sheet(edit.sheet).freeze = { rows, columns };
        return;
      }
      case "print-setup":
        return printSetup(draft, edit);
      case "add-note":
        return addNote(draft.sheet(edit.sheet), edit);
      case "filter":
        refuseOutside(edit.sheet, edit.area);
        draft.sheet(edit.sheet).filters.push(edit);
        return;
      case "move-beside":
        draft.sheet(edit.sheet).moves.push(...edit.moves);
        return;
      case "offer-words":
        refuseOutside(edit.sheet, edit.area);
        draft.sheet(edit.sheet).choices.push(edit);
        return;
      case "add-chart":
        refuseOutside(edit.sheet, edit.over);
        draft.sheet(edit.sheet).charts.push(edit);
    }
  }
}

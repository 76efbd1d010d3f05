/** One logbook file under one seed's hands, and what must hold of it after each act. */
import assert from "node:assert/strict";
import {
  type Edit,
  type FileProblem,
  isFileProblem,
  newXlsx,
  openXlsx,
  patchedXlsx,
  sayFile,
  type Workbook,
} from "../../../src/xlsx";
import { ownLogbook } from "../../../src/workbook/own/own-logbook";
import type { Chance } from "../chance";
import { Model, type Span } from "./model";

const well = <T>(made: T | FileProblem): T => {
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
};

export const notes = "Notes, Ferry's";
const quoted = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;

const letters = (column: number): string =>
  column < 26
    ? String.fromCharCode(65 + column)
    : letters(Math.floor(column / 26) - 1) + letters(column % 26);

export class WeekWorld {
  readonly model = new Model();
  workbook: Workbook;
  /** Where lots and first titres stand, from 0. */
  readonly lot: number;
  readonly titre: number;
  private count = 0;

  constructor(readonly chance: Chance) {
    this.workbook = well(openXlsx(well(newXlsx(ownLogbook()))));
    this.patch([{ do: "add-sheet", name: notes }]);
    this.model.sheets = this.workbook.sheets.map(({ name }) => name);
    const headings = this.table.columns.map(({ heading }) => heading);
    this.lot = headings.indexOf("Lot");
    this.titre = headings.indexOf("Titre 1 mL");
    this.model.sum = { from: 3, to: 3 };
    this.setNote(0, this.sumFormula());
  }

  fresh = (): string => `W-${String((this.count += 1))}`;

  patch(edits: readonly Edit[]): void {
    this.workbook = well(patchedXlsx(this.workbook, edits));
  }

  get sheet() {
    const found = this.workbook.sheets.find(({ name }) => name === this.model.sheet);
    assert.ok(found, `there is no sheet ${this.model.sheet}`);
    return found;
  }

  get table() {
    const found = this.sheet.tables.find(({ name }) => name === "Titrations");
    assert.ok(found, "there is no table Titrations");
    return found;
  }

  at(sheet: string, row: number, column: number) {
    const cells = this.workbook.sheets.find(({ name }) => name === sheet)?.cells ?? [];
    return cells.find((cell) => cell.row === row && cell.column === column);
  }

  /** A cell of the sheet of notes gets a formula. */
  setNote(row: number, formula: string): void {
    const content = { kind: "formula", formula, result: undefined } as const;
    const column = this.model.before;
    this.patch([{ do: "set-cell", sheet: notes, row, column, content }]);
  }

  noteFormula(span: Span): string {
    return span
      ? `=${quoted(this.model.sheet)}!${letters(this.lot)}${String(span.from + 1)}`
      : "=#REF!";
  }

  sumFormula(): string {
    const { sum } = this.model;
    if (!sum) return "=SUM(#REF!)";
    const column = `$${letters(this.titre)}`;
    const from = `${column}$${String(sum.from + 1)}`;
    return `=SUM(${quoted(this.model.sheet)}!${from}:${column}$${String(sum.to + 1)})`;
  }

  private formulaIs(row: number, wanted: string): void {
    const found = this.at(notes, row, this.model.before)?.formula ?? "";
    const { sheet } = this.model;
    // a lost reference may keep its sheet, and a plain name needs no quotes
    const plain = (text: string): string =>
      text
        .replaceAll(`${quoted(sheet)}!`, "§")
        .replaceAll(`${sheet}!`, "§")
        .replaceAll("§#REF!", "#REF!");
    assert.equal(plain(found), plain(wanted), `${notes} row ${String(row + 1)}`);
  }

  /** Nothing lost, nothing wrong. */
  check(): void {
    const { model } = this;
    assert.deepEqual(
      this.workbook.sheets.map(({ name }) => name),
      model.sheets,
    );
    const { area, columns } = this.table;
    assert.deepEqual(
      { row: area.row, rows: area.rows, column: area.column },
      { row: model.top, rows: model.lines.length + 1, column: 0 },
    );
    const cells = new Map(this.sheet.cells.map((cell) => [cell.row * 1000 + cell.column, cell]));
    const inRow = (row: number, column: number) => cells.get(row * 1000 + column);
    model.lines.forEach(({ lot, titre }, at) => {
      const row = model.top + 1 + at;
      assert.equal(inRow(row, this.lot)?.value, lot, `the lot of row ${String(row + 1)}`);
      assert.equal(inRow(row, this.titre)?.value, titre, `the titre of row ${String(row + 1)}`);
      columns.forEach(({ formula, heading }, column) => {
        assert.equal(inRow(row, column)?.formula, formula, `${heading} of row ${String(row + 1)}`);
      });
    });
    const lots = this.sheet.cells.filter(
      ({ value, column }) =>
        column === this.lot && typeof value === "string" && value.startsWith("W-"),
    );
    assert.equal(lots.length, model.lines.filter(({ lot }) => lot !== undefined).length);
    this.formulaIs(0, this.sumFormula());
    model.notes.forEach((span, at) => {
      this.formulaIs(at + 1, this.noteFormula(span));
    });
  }
}

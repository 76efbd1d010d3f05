/**
 * The new file read back: each cell stands where the mapping says, with its value, its look, and its own
 * formula moved by itself, however the file shares it; merges, tables, notes and names likewise.
 */
import type { Area } from "../../../sheet/area";
import { areaName } from "../../../sheet/cell-name";
import { named } from "../../cell-address";
import { limits } from "../../limits";
import type { Cell, Sheet, Workbook } from "../../model";
import { refuse } from "../../problem";
import { isAsMeant } from "../../read-back";
import { isSameSheet } from "../sheets/in-formula";
import type { Lines } from "./lines";
import { byFixedLines, movedFormula } from "./moved-formula";

const other = (place: string): never => refuse({ code: "not-as-meant", place });

const isSameValue = (a: Cell["value"], b: Cell["value"]): boolean =>
  typeof a === "object" && typeof b === "object" ? a.error === b.error : a === b;

const keyOf = (row: number, column: number): number => row * limits.columns + column;

class Proof {
  private readonly known = new Map<string, boolean>();
  private readonly moved = new Map<string, string | undefined>();

  constructor(private readonly lines: Lines) {}

  private meant(formula: string, sheet: string): string | undefined {
    const key = `${sheet}\n${formula}`;
    if (!this.moved.has(key)) this.moved.set(key, movedFormula(formula, sheet, this.lines));
    return this.moved.get(key);
  }

  private isSameFormula(before: Cell, after: Cell, sheet: string): boolean {
    if (before.formula === undefined || after.formula === undefined) {
      return before.formula === after.formula;
    }
    const formula = this.meant(before.formula, sheet);
    return formula !== undefined && isAsMeant({ formula }, after.formula, this.known);
  }

  private area(area: Area, isMoving: boolean): Area | undefined {
    return isMoving ? this.lines.area(area) : area;
  }

  cells(before: Sheet, after: Sheet): void {
    const { lines } = this;
    const isMoving = isSameSheet(before.name, lines.sheet);
    const found = new Map(after.cells.map((cell) => [keyOf(cell.row, cell.column), cell]));
    for (const cell of before.cells) {
      const place = this.area(
        { row: cell.row, column: cell.column, rows: 1, columns: 1 },
        isMoving,
      );
      if (!place) continue;
      const key = keyOf(place.row, place.column);
      const now = found.get(key);
      found.delete(key);
      const array = cell.array && this.area(cell.array, isMoving);
      const isSame =
        now?.look === cell.look &&
        isSameValue(cell.value, now.value) &&
        this.isSameFormula(cell, now, before.name) &&
        (array && areaName(array)) === (now.array && areaName(now.array));
      if (!isSame) other(named(after.name, place.row, place.column));
    }
    for (const cell of found.values()) {
      const line = cell[lines.axis];
      const isNew =
        isMoving && lines.isInserting && line >= lines.at && line < lines.at + lines.count;
      if (!isNew || cell.value !== undefined) other(named(after.name, cell.row, cell.column));
    }
  }

  around(before: Sheet, after: Sheet): void {
    const isMoving = isSameSheet(before.name, this.lines.sheet);
    const same = (one: readonly string[], two: readonly string[]): void => {
      if ([...one].sort().join() !== [...two].sort().join()) other(after.name);
    };
    const move = (areas: readonly Area[]): string[] =>
      areas.flatMap((area) => {
        const now = this.area(area, isMoving);
        return now && now.rows * now.columns > 0 ? [areaName(now)] : [];
      });
    const many = (names: readonly string[]): string[] => names.filter((name) => name.includes(":"));
    same(many(move(before.merged)), after.merged.map(areaName));
    same(
      move(before.tables.map(({ area }) => area)),
      after.tables.map(({ area }) => areaName(area)),
    );
    const note = ({ row, column }: { row: number; column: number }): Area => ({
      row,
      column,
      rows: 1,
      columns: 1,
    });
    same(move(before.notes.map(note)), after.notes.map(note).map(areaName));
  }

  names(before: Workbook, after: Workbook): void {
    if (before.names.length !== after.names.length) other("a defined name");
    for (const [index, { name, refersTo }] of before.names.entries()) {
      const now = after.names[index];
      const meant =
        movedFormula(refersTo, undefined, this.lines, byFixedLines(this.lines)) ?? refersTo;
      if (now?.name !== name || !isAsMeant({ formula: meant }, now.refersTo, this.known))
        other(name);
    }
  }
}

export function refuseOtherwise(before: Workbook, after: Workbook, lines: Lines): void {
  const proof = new Proof(lines);
  if (before.sheets.length !== after.sheets.length) other(lines.sheet);
  for (const [index, sheet] of before.sheets.entries()) {
    const now = after.sheets[index];
    if (now?.name !== sheet.name) return other(sheet.name);
    proof.cells(sheet, now);
    proof.around(sheet, now);
  }
  proof.names(before, after);
}

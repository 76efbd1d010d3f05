/**
 * Which formulas are held: not worked out here, because the result might not be what other programs
 * give, or because they read such a cell. A held formula stays in its cell and shows its old result.
 * The grid's engine asks, whenever it works something out; see engine/remembering.ts.
 */
import { isWorkable } from "../file/workable";
import { unprovenReason } from "../trust/proven";
import { affectedCells } from "./affected";
import type { Surroundings } from "./blocks-read";
import { keyAt } from "./cell-keys";
import { clockCells } from "./clock-cells";
import { Doubted } from "./doubted";
import { areaInFile, type HeldFile, unworkable } from "./held-file";
import type { HeldTerms, IsHeld } from "./held-terms";
import { heldCells, reading } from "./follow";
import { type Asked, type At, each, type HeldPlace, type Marks, put } from "./marks";
import type { ReadBlock } from "./readers";
import { OwnMarks } from "./own-marks";
import { days1904, differs, type Reason } from "./reasons";
import { subtotalReasons } from "./subtotals";
import { templateOf } from "./template";

export class Holding {
  private unit = "";
  private file: HeldFile | undefined;
  private around: Surroundings | undefined;
  /** Nothing is worked out, for this reason. */
  private all: string | undefined;
  private own = new OwnMarks();
  private held: Marks<Reason> = new Map();
  private reasons = new Map<string, string | undefined>();
  private asked: readonly Asked[] = [];
  /** Of results that are shown and not saved. */
  readonly doubted = new Doubted();
  private spillOf: (at: At) => ReadBlock | undefined = () => undefined;

  /** A workbook takes the place of the one before; without a file it is one of ours. */
  begin(unit: string, around: Surroundings, { file, marks, all }: HeldTerms = {}): void {
    this.unit = unit;
    this.around = around;
    this.file = file;
    this.all = all;
    this.own = new OwnMarks(marks);
    this.held = new Map();
    this.asked = [];
    this.spillOf = () => undefined;
    this.reasons.clear();
  }

  isOf(unit: string): boolean {
    return unit === this.unit;
  }

  /** Names, tables or sheets are not what they were. */
  forget(): void {
    this.reasons.clear();
  }

  /** These are held too, and what reads them. */
  holdToo(marks: readonly HeldPlace[]): void {
    for (const place of marks) this.own.put(place, differs);
    this.settle(this.asked, this.spillOf);
  }

  /** The formulas that came to something else than the file says, at this moment. */
  differing = (): IsHeld => this.own.differing();

  /** Nothing is worked out. */
  get isAll(): boolean {
    return this.all !== undefined;
  }

  /** Why a formula is held for itself; undefined when it may be worked out. */
  ownReason(sheet: string, row: number, column: number, formula: string): string | undefined {
    if (this.all !== undefined) return this.all;
    const key = keyAt(row, column);
    const marked = this.own.says(sheet, key, formula);
    if (marked !== undefined) return marked;
    if (this.file?.dates === 1904) return days1904;
    if (!isWorkable(formula)) return unworkable;
    const there = this.file?.formulas.get(sheet)?.get(key);
    // typed in the grid, it spills, and is saved as it does
    const isArray = there?.formula === formula ? there.array !== undefined : true;
    const name = `${sheet}\n${String(isArray)}\n${templateOf(formula)}`;
    if (this.reasons.has(name)) return this.reasons.get(name);
    const found = unprovenReason(formula, {
      isArray,
      nameRefersTo: (given) => this.around?.refersTo(given, sheet),
      isTable: (given) => this.around?.table(given, { sheet, row, column }) !== undefined,
      dates: this.file?.dates ?? 1900,
    });
    this.reasons.set(name, found);
    return found;
  }

  /** From now on the formula is held, for this reason. */
  mark(sheet: string, row: number, column: number, formula: string, says: string): void {
    const key = keyAt(row, column);
    this.own.put({ sheet, key, formula }, says);
    put(this.held, sheet, key, { kind: "own", says });
  }

  /**
   * Follows what hangs on held cells.
   * @param asked every formula of the workbook
   * @param areaOf the cells a formula answers over in the grid, where there are more than one
   */
  settle(asked: readonly Asked[], areaOf: (at: At) => ReadBlock | undefined): void {
    this.asked = asked;
    this.spillOf = areaOf;
    const subtotals = subtotalReasons(asked, this.file?.hiddenRows ?? new Map());
    this.held = heldCells({
      asked,
      stuck: this.stuck,
      ownReason: (each) => {
        const { sheet, row, column, formula, held } = each;
        const marked = this.own.says(sheet, keyAt(row, column), formula);
        return held ?? marked ?? subtotals.get(each);
      },
      areaOf: (at) => this.areaOf(at),
    });
  }

  private get stuck(): HeldFile["stuck"] {
    return this.file?.stuck ?? new Map<string, Map<number, string>>();
  }

  private areaOf(at: At): ReadBlock | undefined {
    return this.spillOf(at) ?? areaInFile(this.file, at);
  }

  reasonAt(sheet: string, row: number, column: number): Reason | undefined {
    return this.held.get(sheet)?.get(keyAt(row, column));
  }

  /** Part of an array formula that is held, its first cell among them: the whole stays as it is. */
  isInArray(sheet: string, row: number, column: number): boolean {
    const reason = this.reasonAt(sheet, row, column);
    if (!reason) return false;
    return reason.kind === "part" || areaInFile(this.file, { sheet, row, column }) !== undefined;
  }

  /** What is held at this moment, whatever comes later. */
  now(): IsHeld {
    const { held } = this;
    return (sheet, row, column) => held.get(sheet)?.has(keyAt(row, column)) ?? false;
  }

  get isEmpty(): boolean {
    return this.held.size === 0;
  }

  /** Every held cell with its reason. */
  cells() {
    return each(this.held);
  }

  /** Tells of a cell whether its formula reads one of these, by whatever way. */
  reading(from: readonly At[]): IsHeld {
    const found = reading(this.asked, from, (each) => each.reads);
    return (sheet, row, column) => found.get(sheet)?.has(keyAt(row, column)) ?? false;
  }

  /** The cells that go by the day or the time, or read such a one, and are worked out here. */
  byTheClock(): IsHeld {
    const goBy = clockCells(this.asked, (name, sheet) => this.around?.refersTo(name, sheet));
    return (sheet, row, column) =>
      goBy(sheet, row, column) && this.reasonAt(sheet, row, column) === undefined;
  }

  private get doubts(): Marks<Reason> {
    return this.doubted.cells(this.unit, this.asked, (at) => this.areaOf(at));
  }

  /** Why the result that is shown is not saved; undefined where it is, or where it is held. */
  doubtAt(sheet: string, row: number, column: number): Reason | undefined {
    if (this.reasonAt(sheet, row, column)) return undefined;
    return this.doubts.get(sheet)?.get(keyAt(row, column));
  }

  /** The cells whose results of now are doubtful, or read such a one: they are not saved. */
  doubtful(): IsHeld {
    const { doubts } = this;
    return (sheet, row, column) => doubts.get(sheet)?.has(keyAt(row, column)) ?? false;
  }

  /** Every doubtful cell with its reason. */
  doubtfulCells() {
    return each(this.doubts);
  }

  /** How many held cells may no longer hold once these have changed, themselves left out. */
  affected(changed: readonly At[]): number {
    const { around, asked, stuck } = this;
    if (this.isEmpty || changed.length === 0 || !around) return 0;
    const held = asked.filter((at) => this.reasonAt(at.sheet, at.row, at.column));
    return affectedCells(held, stuck, changed, around);
  }
}

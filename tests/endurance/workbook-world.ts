/** The workbook that is open, beside the model of its undo steps. */
import { MemoryHost } from "../host/memory";
import type { MemoryBook } from "../host/memory/book";
import type { Block, Cells, Content } from "../../src/sheet/port";
import { isFault } from "../../src/sheet/port";
import type { Book } from "../../src/sheet/book";
import { calculation } from "../host/calculation";
import { memoryBook } from "../host/open-memory";
import { differences, type Held, heldIn, told } from "./held";

export class WorkbookWorld {
  host: MemoryHost;
  /** What stood there before each undo step, and what undo took away. */
  private done: Held[] = [];
  private undone: Held[] = [];
  present: Held = {};
  /** Somebody typed over a heading or a formula: results are not foretold any more. */
  isSpoilt = false;

  constructor(book?: Book) {
    this.host = new MemoryHost(calculation);
    this.open(book);
  }

  open(book: Book | undefined): void {
    this.host = new MemoryHost(calculation, book && memoryBook(book));
    [this.done, this.undone, this.isSpoilt] = [[], [], false];
    this.present = this.look();
  }

  peek<T>(how: (book: MemoryBook) => T): T {
    let found: T | undefined;
    this.host.change((book) => (found = how(book)));
    return found as T;
  }

  look = (): Held => this.peek(heldIn);

  /** The workbook is as the model has it. */
  check(what: string): void {
    this.same(this.present, this.look(), what);
  }

  same(wanted: Held, found: Held, what: string): void {
    const places = differences(wanted, found);
    if (places.length > 0) throw new Error(`${what} changed ${told(places, wanted, found)}`);
  }

  /** One undo step was made. */
  written(): void {
    this.done.push(this.present);
    this.undone = [];
    this.present = this.look();
    this.sameSteps();
  }

  sameSteps(): void {
    const { length } = this.host.undoLabels;
    if (length !== this.done.length) {
      throw new Error(`${String(length)} undo steps, not ${String(this.done.length)}`);
    }
  }

  undo(): void {
    const before = this.done.pop();
    if (before) this.undone.push(this.present);
    this.present = before ?? this.present;
    this.host.undo();
    this.free();
    this.check("undo");
  }

  redo(): void {
    const after = this.undone.pop();
    if (after) this.done.push(this.present);
    this.present = after ?? this.present;
    this.host.redo();
    this.free();
    this.check("redo");
  }

  /** Somebody types into a cell; one undo step of its own. */
  async type(block: Block, content: Content): Promise<void> {
    const wanted: Record<string, string> = { ...this.present };
    const place = `${block.sheet}!${String(block.row)},${String(block.column)}`;
    Reflect.deleteProperty(wanted, place);
    if (content.kind === "value" && content.value !== "") {
      wanted[place] = JSON.stringify([content.value, ""]);
    } else if (content.kind === "formula") wanted[place] = JSON.stringify(["", content.formula]);
    const done = await this.host.write("Typing", [
      { do: "set-cells", block, contents: [[content]] },
    ]);
    if (isFault(done)) throw new Error(`typing was refused: ${done.code}`);
    this.written();
    this.same(wanted, this.present, "typing");
  }

  async cells(block: Block): Promise<Cells> {
    const found = await this.host.read([{ ask: "cells", block }]);
    const cells = isFault(found) ? undefined : found[0];
    if (cells?.kind !== "cells") throw new Error(`cells of ${block.sheet} could not be read`);
    return cells;
  }

  sheetNames = (): string[] => this.peek(({ sheets }) => sheets.map(({ name }) => name));

  tableBlock = (name: string): Block | undefined =>
    this.peek(({ tables }) => tables.find((table) => table.name === name)?.block);

  /** Headings of a table, as it writes them. */
  headings(block: Block): string[] {
    return Array.from({ length: block.columns }, (_, at) => {
      const cell = this.present[`${block.sheet}!${String(block.row)},${String(block.column + at)}`];
      return cell === undefined ? "" : String((JSON.parse(cell) as [unknown])[0]);
    });
  }

  /** Takes off every protection and filter. */
  free(): void {
    this.peek((book) => {
      book.isProtected = book.isReadOnly = false;
      for (const sheet of book.sheets) sheet.isProtected = false;
      for (const table of book.tables) table.isFiltered = false;
    });
  }
}

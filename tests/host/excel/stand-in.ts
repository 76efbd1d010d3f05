/**
 * A stand-in for the spreadsheet program: its runtime, over a workbook in memory, at least as strict.
 * Undo groups are refused, as the web does with the option alone; one sync is one undo record; a sheet
 * that is deleted ends what can be undone; too large a request fails; functions of an add-in answer late.
 */
import { cellToChange, emptySheet, type MemoryBook, sheetNamed } from "../memory/book";
import type { Block } from "../../../src/sheet/port";
import { shownAsOpened } from "./as-opened";
import { Conversation, ProgramError, remote } from "./remote";
import { findSheet, findTable, sheetAt, tableAt } from "./stand-in-objects";
import { blockOf, type Model, rangeAt, sheetToChange, type Talk } from "./stand-in-range";

type Handler = () => Promise<void>;

interface Options {
  readonly mergeUndoGroup?: boolean;
  readonly delayForCellEdit?: boolean;
}

export class ExcelStandIn {
  readonly model: Model;
  readonly options: Options[] = [];
  readonly log: string[] = [];
  readonly misuses: string[] = [];
  /** The program fails at this change of the next write, counted from 1, with this code. */
  failing: { readonly at: number; readonly code: string; readonly for?: number } | undefined;
  /** It fails each time something of that name is changed: "notes.add". */
  broken: { readonly what: RegExp; readonly code: string } | undefined;
  private past: MemoryBook[] = [];
  private future: MemoryBook[] = [];
  /** The largest request so far, in bytes, as it is estimated here. */
  largest = 0;
  /** How often the workbook was changed. */
  changes = 0;
  /** The workbook as it was when the request began that changes it. */
  private before: MemoryBook | undefined;
  private readonly handlers = {
    selection: new Set<Handler>(),
    change: new Set<Handler>(),
    calculation: new Set<Handler>(),
  };

  constructor(book: MemoryBook) {
    const sheet = book.sheets[0]?.name ?? "";
    shownAsOpened(book);
    const selection = { sheet, row: 0, column: 0, rows: 1, columns: 1 };
    this.model = { book, selection, newest: 21, isUndoLost: false, syncs: 0, late: new Map() };
  }

  get undoRecords(): number {
    return this.past.length;
  }

  /** Excel.run: one conversation, each sync of which that changes anything is one undo record. */
  readonly run = async <T>(
    options: Options,
    work: (context: unknown) => Promise<T>,
  ): Promise<T> => {
    this.options.push(options);
    if (options.mergeUndoGroup) throw new ProgramError("UndoNotSupported");
    const count = this.changes;
    const talk = new Conversation(
      (what) => {
        this.changing(what);
      },
      {
        begins: () => (this.model.syncs += 1),
        ends: () => {
          if (this.before) this.remember(this.before);
          this.before = undefined;
        },
      },
    );
    try {
      return await work({ workbook: this.workbook({ model: this.model, talk }), sync: talk.sync });
    } finally {
      this.log.push(...talk.log);
      this.misuses.push(...talk.misuses);
      this.largest = Math.max(this.largest, talk.largest);
      if (this.changes > count) {
        for (const heard of [...this.handlers.change, ...this.handlers.calculation]) void heard();
      }
    }
  };

  undo(): void {
    const before = this.past.pop();
    if (!before) return;
    this.future.push(this.model.book);
    this.model.book = before;
  }

  redo(): void {
    const after = this.future.pop();
    if (!after) return;
    this.past.push(this.model.book);
    this.model.book = after;
  }

  select(block: Block): void {
    this.model.selection = { ...block, rows: 1, columns: 1 };
    for (const heard of this.handlers.selection) void heard();
  }

  private changing(what = ""): void {
    this.changes += 1;
    if (this.broken?.what.test(what)) throw new ProgramError(this.broken.code);
    const { failing } = this;
    if (failing && this.changes >= failing.at && this.changes < failing.at + (failing.for ?? 1)) {
      throw new ProgramError(failing.code);
    }
    this.before ??= structuredClone(this.model.book);
  }

  private remember(book: MemoryBook): void {
    this.past.push(book);
    this.future = [];
    if (this.model.isUndoLost) this.past = [];
    this.model.isUndoLost = false;
  }

  private event(handlers: Set<Handler>, { talk }: Talk): object {
    return remote(talk, "event", {
      gives: {
        add: (handler: Handler) => {
          talk.later(() => handlers.add(handler));
          return { remove: () => talk.later(() => handlers.delete(handler)) };
        },
      },
    });
  }

  private workbook(on: Talk): object {
    const { model, talk } = on;
    return remote(talk, "workbook", {
      reads: { readOnly: () => model.book.isReadOnly },
      gives: { getActiveCell: () => rangeAt(on, () => model.selection) },
      parts: {
        application: () => remote(talk, "application", { reads: { decimalSeparator: () => "," } }),
        worksheets: () => this.worksheets(on),
        tables: () => this.tables(on),
        names: () => this.list(on, "names", () => Object.keys(model.book.definedNames)),
        protection: () =>
          remote(talk, "protection", { reads: { protected: () => model.book.isProtected } }),
        notes: () => {
          if (model.newest < 18) talk.misused("no such member: workbook.notes");
          return remote(talk, "notes", {
            changes: {
              add: (range: object, text: string) => {
                const { sheet, row, column } = blockOf(range);
                cellToChange(sheetToChange(model, sheet), row, column).note = text;
              },
            },
          });
        },
        onSelectionChanged: () => this.event(this.handlers.selection, on),
      },
    });
  }

  private list(on: Talk, name: string, names: () => string[]): object {
    return remote(on.talk, name, {
      reads: { items: () => names().map((each) => ({ name: each })) },
    });
  }

  private tables(on: Talk): object {
    const { model, talk } = on;
    return remote(talk, "tables", {
      reads: { items: () => model.book.tables.map(({ name }) => ({ name })) },
      gives: {
        getItem: (name: string) => tableAt(on, findTable(model, name)),
        getItemOrNullObject: (name: string) => tableAt(on, findTable(model, name), true),
        add: (range: object, hasHeaders: boolean) => {
          if (!hasHeaders) throw new ProgramError("InvalidArgument");
          let made: MemoryBook["tables"][number] | undefined;
          talk.later(() => {
            talk.changing();
            const block = blockOf(range);
            sheetToChange(model, block.sheet);
            made = { name: "Table1", block, isFiltered: false, hasTotals: false };
            model.book.tables.push(made);
          });
          return tableAt(on, () => made);
        },
      },
    });
  }

  private worksheets(on: Talk): object {
    const { model, talk } = on;
    return remote(talk, "worksheets", {
      reads: {
        items: () =>
          model.book.sheets.map((sheet) =>
            sheetAt(on, () => sheet, { loaded: { name: sheet.name } }),
          ),
      },
      changes: {
        add: (name: string) => {
          if (model.book.isProtected) throw new ProgramError("AccessDenied");
          if (sheetNamed(model.book, name)) throw new ProgramError("ItemAlreadyExists");
          model.book.sheets.push(emptySheet(name));
        },
      },
      gives: {
        getItem: (name: string) => sheetAt(on, findSheet(model, name)),
        getItemOrNullObject: (name: string) =>
          sheetAt(on, findSheet(model, name), {
            isNull: () => findSheet(model, name)() === undefined,
          }),
      },
      parts: {
        onChanged: () => this.event(this.handlers.change, on),
        onCalculated: () => this.event(this.handlers.calculation, on),
      },
    });
  }
}

/** Puts the stand-in where the program's runtime would be. */
export function installExcel(standIn: ExcelStandIn): void {
  Object.assign(globalThis, {
    Excel: { run: standIn.run, RangeValueType: { error: "Error" } },
    Office: {
      HostType: { Excel: "Excel" },
      PlatformType: { Mac: "Mac" },
      context: {
        diagnostics: { host: "Excel", platform: "PC", version: "16.0.0.1" },
        requirements: {
          isSetSupported: (_: string, version: string) =>
            Number(version.split(".")[1]) <= standIn.model.newest,
        },
      },
      onReady: () => Promise.resolve({ host: "Excel" }),
    },
  });
}

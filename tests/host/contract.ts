/** What every host must do. Run it on a host by giving it a way to open a book. */
import { afterEach, describe, expect, it } from "vitest";
import {
  type Block,
  type Cells,
  type Content,
  type Event,
  type Found,
  type Host,
  isFault,
  type Question,
  type Step,
} from "../../src/host/port";
import type { Book, BookCell, BookTable } from "../../src/workbook/book";
import { awkwardTexts } from "../workbook/record/records";
import { recordingContract } from "./recording-contract";

/** A host in a test, with what a person at the keyboard could do. */
export interface OpenHost {
  readonly host: Host;
  undo(): Promise<void>;
  redo(): Promise<void>;
  select(block: Block): Promise<void>;
  /** For hosts that have protected sheets and filtered tables. */
  protect(sheet: string): Promise<void>;
  filter(table: string): Promise<void>;
  close(): void;
}

/** What the program has, beyond what all of them have. */
export interface Offers {
  readonly protection: boolean;
  readonly filters: boolean;
  /** A write that failed leaves nothing behind that could be undone. */
  readonly cleanFailures: boolean;
}

export type OpenBook = (book: Book) => Promise<OpenHost>;

const block = (row: number, column: number, rows = 1, columns = 1, sheet = "Log"): Block => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

const value = (given: string | number | boolean): Content => ({ kind: "value", value: given });
const formula = (given: string): Content => ({ kind: "formula", formula: given });
const set = (at: Block, contents: Content[][]): Step => ({ do: "set-cells", block: at, contents });

const typed = (given: string | number | boolean | null): BookCell | null => {
  if (given === null) return null;
  return typeof given === "string" && given.startsWith("=") ? { formula: given } : { value: given };
};

const bookOf = (
  rows: readonly (readonly (string | number | boolean | null)[])[],
  tables: readonly BookTable[] = [],
): Book => ({
  name: "test",
  sheets: [
    {
      name: "Log",
      rows: rows.map((row) => row.map(typed)),
      columnWidths: [],
      tables,
      frozenRows: 0,
    },
    { name: "Other sheet", rows: [[{ value: 7 }]], columnWidths: [], tables: [], frozenRows: 0 },
  ],
});

/** A title, then a table of two rows with a calculated column. */
const logbook = bookOf(
  [
    ["Titrations of the jetty"],
    ["Lot", "Titre 1 mL", "Blank 1 mL", "Corrected"],
    [
      "A",
      2.4,
      0.1,
      "=TITRE.CORRECTED(Jetty[[#This Row],[Titre 1 mL]],Jetty[[#This Row],[Blank 1 mL]])",
    ],
    [
      "B",
      3.1,
      0.1,
      "=TITRE.CORRECTED(Jetty[[#This Row],[Titre 1 mL]],Jetty[[#This Row],[Blank 1 mL]])",
    ],
  ],
  [{ name: "Jetty", row: 1, column: 0, rows: 3, columns: 4 }],
);

export function hostContract(name: string, offers: Offers, open: OpenBook): void {
  describe(name, () => {
    const opened: OpenHost[] = [];
    const opening = async (book: Book): Promise<OpenHost> => {
      const host = await open(book);
      opened.push(host);
      return host;
    };
    afterEach(() => {
      for (const host of opened.splice(0)) host.close();
    });

    const read = async (host: Host, ...questions: Question[]): Promise<readonly Found[]> => {
      const found = await host.read(questions);
      if (isFault(found)) throw new Error(`fault ${found.code} ${found.about}`);
      return found;
    };
    const cells = async (host: Host, at: Block): Promise<Cells> => {
      const [found] = await read(host, { ask: "cells", block: at });
      if (found?.kind !== "cells") throw new Error("no cells");
      return found;
    };
    const done = async (host: Host, ...steps: Step[]): Promise<void> => {
      expect(await host.write("Test", steps)).toBeUndefined();
    };

    describe("reading", () => {
      it("answers values, formulas and formats, with empty text where there is nothing", async () => {
        const { host } = await opening(
          bookOf([
            [1.5, null, "=A1*2"],
            ["007", true, "=1/0"],
          ]),
        );
        const found = await cells(host, block(0, 0, 3, 3));
        expect(found.values).toEqual([
          [1.5, "", 3],
          ["007", true, { error: "#DIV/0!" }],
          ["", "", ""],
        ]);
        expect(found.formulas).toEqual([
          ["", "", "=A1*2"],
          ["", "", "=1/0"],
          ["", "", ""],
        ]);
        expect(found.formats[0]).toEqual(["General", "General", "General"]);
      });

      it("answers in the order asked, and says where there is nothing", async () => {
        const { host } = await opening(logbook);
        const found = await read(
          host,
          { ask: "table", name: "Nowhere" },
          { ask: "cells", block: block(0, 0, 1, 1, "No such sheet") },
          { ask: "cells", block: block(0, 0) },
        );
        expect(found.map(({ kind }) => kind)).toEqual(["nothing", "nothing", "cells"]);
      });

      it("finds a table by its name in any case, with its headings", async () => {
        const { host } = await opening(logbook);
        const [found] = await read(host, { ask: "table", name: "jetty" });
        expect(found).toEqual({
          kind: "table",
          name: "Jetty",
          block: block(1, 0, 3, 4),
          headings: ["Lot", "Titre 1 mL", "Blank 1 mL", "Corrected"],
          isFiltered: false,
          hasTotals: false,
        });
      });

      it("lists the sheets with what they hold, and the names that are taken", async () => {
        const { host } = await opening(logbook);
        const [sheets, names] = await read(host, { ask: "sheets" }, { ask: "names" });
        expect(sheets).toEqual({
          kind: "sheets",
          isProtected: false,
          sheets: [
            { name: "Log", isProtected: false, used: block(0, 0, 4, 4) },
            { name: "Other sheet", isProtected: false, used: block(0, 0, 1, 1, "Other sheet") },
          ],
        });
        expect(names).toEqual({ kind: "names", tables: ["Jetty"], defined: [] });
      });

      it("answers the active one of the selected cells", async () => {
        const { host, select } = await opening(logbook);
        await select(block(2, 0, 1, 2));
        const [found] = await read(host, { ask: "selection" });
        expect(found).toMatchObject({ block: block(2, 0), values: [["A"]] });
      });
    });

    describe("writing", () => {
      it("puts values and formulas, leaves cells that are kept, and empties what gets empty text", async () => {
        const { host } = await opening(bookOf([[1, 2, 3, 4]]));
        await done(
          host,
          set(block(0, 0, 2, 4), [
            [value(10), { kind: "keep" }, value(""), formula("=A1+B1")],
            [value(true), value("x"), { kind: "keep" }, value(0)],
          ]),
        );
        const found = await cells(host, block(0, 0, 2, 4));
        expect(found.values).toEqual([
          [10, 2, "", 12],
          [true, "x", "", 0],
        ]);
        expect(found.formulas[0]).toEqual(["", "", "", "=A1+B1"]);
      });

      it("keeps a text a text, whatever it looks like", async () => {
        const { host } = await opening(bookOf([[1]]));
        const at = block(0, 0, awkwardTexts.length, 1);
        await done(
          host,
          set(
            at,
            awkwardTexts.map((each) => [value(each)]),
          ),
        );
        const found = await cells(host, at);
        expect(found.values.flat()).toEqual(awkwardTexts);
        expect(found.formulas.flat().join("")).toBe("");
      });

      it("replaces a formula by a value and a value by a formula", async () => {
        const { host } = await opening(bookOf([[1, "=A1"]]));
        await done(host, set(block(0, 0, 1, 2), [[formula("=2+3"), value("plain")]]));
        const found = await cells(host, block(0, 0, 1, 2));
        expect(found.values).toEqual([[5, "plain"]]);
        expect(found.formulas).toEqual([["=2+3", ""]]);
      });

      it("keeps the number format it is given, and the one that was there", async () => {
        const { host } = await opening(bookOf([[1]]));
        const dated: Content = { kind: "value", value: 46146, format: "yyyy-mm-dd" };
        await done(host, set(block(0, 0), [[dated]]));
        await done(host, set(block(0, 0), [[value(46147)]]));
        const found = await cells(host, block(0, 0));
        expect([found.values, found.formats]).toEqual([[[46147]], [["yyyy-mm-dd"]]]);
      });

      it("makes a sheet and a table whose formulas name its columns, and one undo removes it all", async () => {
        const { host, undo, redo } = await opening(bookOf([[1]]));
        const twice = formula("=2*Gauge[[#This Row],[Level]]");
        const steps: Step[] = [
          { do: "add-sheet", name: "Gauges" },
          set(block(0, 0, 1, 2, "Gauges"), [[value("Level"), value("Twice")]]),
          { do: "add-table", name: "Gauge", block: block(0, 0, 2, 2, "Gauges") },
          set(block(1, 0, 1, 2, "Gauges"), [[value(4), twice]]),
          { do: "set-width", sheet: "Gauges", column: 0, characters: 20 },
          { do: "freeze-rows", sheet: "Gauges", rows: 1 },
          { do: "add-note", block: block(0, 0, 1, 1, "Gauges"), text: "Litres in the tank." },
          { do: "offer-words", block: block(1, 0, 1, 1, "Gauges"), words: ["low", "high"] },
          { do: "select", block: block(1, 0, 1, 2, "Gauges") },
        ];
        const state = () => read(host, { ask: "sheets" }, { ask: "names" });
        const before = await state();
        await done(host, ...steps);
        const after = await state();
        expect((await cells(host, block(1, 0, 1, 2, "Gauges"))).values).toEqual([[4, 8]]);
        expect(after[1]).toMatchObject({ tables: ["Gauge"] });
        await undo();
        expect(await state()).toEqual(before);
        await redo();
        expect(await state()).toEqual(after);
        expect((await cells(host, block(1, 0, 1, 2, "Gauges"))).values).toEqual([[4, 8]]);
      });

      it("lets a table grow with its new row in one undo", async () => {
        const { host, undo } = await opening(logbook);
        const all = block(0, 0, 6, 5);
        const before = await cells(host, all);
        const [table] = await read(host, { ask: "table", name: "Jetty" });
        const again =
          "=TITRE.CORRECTED(Jetty[[#This Row],[Titre 1 mL]],Jetty[[#This Row],[Blank 1 mL]])";
        await done(
          host,
          { do: "grow-table", name: "Jetty", block: block(1, 0, 4, 4) },
          set(block(4, 0, 1, 4), [[value("C"), value(5), value(0.5), formula(again)]]),
        );
        const [grown] = await read(host, { ask: "table", name: "Jetty" });
        expect(grown).toMatchObject({ block: block(1, 0, 4, 4) });
        expect((await cells(host, block(4, 0, 1, 4))).values).toEqual([["C", 5, 0.5, 4.5]]);
        await undo();
        expect(await cells(host, all)).toEqual(before);
        expect(await read(host, { ask: "table", name: "Jetty" })).toEqual([table]);
      });

      it("does nothing when one of its steps cannot be done", async () => {
        const { host, undo } = await opening(logbook);
        await done(host, set(block(8, 0), [[value("mark")]]));
        const all = block(0, 0, 9, 5);
        const before = await cells(host, all);
        const hopeless: Step[][] = [
          [set(block(2, 0), [[value("lost")]]), { do: "add-sheet", name: "Other sheet" }],
          [
            set(block(2, 0), [[value("lost")]]),
            { do: "grow-table", name: "No", block: block(1, 0) },
          ],
          [{ do: "add-sheet", name: "New" }, set(block(0, 0, 1, 1, "Nowhere"), [[value(1)]])],
          [
            { do: "add-sheet", name: "New" },
            set(block(0, 0, 1, 1, "New"), [[value("Lot")]]),
            { do: "add-table", name: "Jetty", block: block(0, 0, 2, 1, "New") },
          ],
        ];
        for (const steps of hopeless) {
          expect(await host.write("Test", steps)).toMatchObject({ kind: "fault" });
          expect(await cells(host, all)).toEqual(before);
          const [sheets] = await read(host, { ask: "sheets" });
          expect(sheets).toMatchObject({ sheets: [{ name: "Log" }, { name: "Other sheet" }] });
        }
        if (!offers.cleanFailures) return;
        // The next undo takes back the mark.
        await undo();
        expect((await cells(host, block(8, 0))).values).toEqual([[""]]);
      });

      if (offers.protection)
        it("names the fault when a sheet is protected", async () => {
          const { host, protect } = await opening(logbook);
          await protect("Log");
          const fault = await host.write("Test", [set(block(2, 0), [[value("lost")]])]);
          expect(fault).toEqual({ kind: "fault", code: "sheet-protected", about: "Log" });
          const [sheets] = await read(host, { ask: "sheets" });
          expect(sheets).toMatchObject({ sheets: [{ isProtected: true }, { isProtected: false }] });
          expect((await cells(host, block(2, 0))).values).toEqual([["A"]]);
        });

      if (offers.filters)
        it("tells when a table is filtered", async () => {
          const { host, filter } = await opening(logbook);
          await filter("Jetty");
          const [table] = await read(host, { ask: "table", name: "Jetty" });
          expect(table).toMatchObject({ isFiltered: true });
        });
    });

    describe("watching", () => {
      it("calls back on a change and on a selection, until it is told to stop", async () => {
        const { host, select } = await opening(logbook);
        const heard: Event[] = [];
        const stop = host.watch((event) => heard.push(event));
        await done(host, set(block(2, 0), [[value("Z")]]));
        expect(heard).toContainEqual({ event: "change" });
        await select(block(2, 0));
        expect(heard).toContainEqual({ event: "selection" });
        stop();
        heard.length = 0;
        await done(host, set(block(2, 0), [[value("Y")]]));
        await select(block(3, 0));
        expect(heard).toEqual([]);
      });
    });

    describe("recording", () => {
      recordingContract(opening);
    });
  });
}

/** What a host does with steps: all of them or none, and one undo for the lot. */
import { expect, it } from "vitest";
import type { Content, Step } from "../../src/sheet/port";
import { awkwardTexts } from "../workbook/record/records";
import {
  block,
  bookOf,
  cells,
  done,
  formula,
  logbook,
  type Offers,
  type Opening,
  read,
  set,
  value,
} from "./contract-parts";

const keep: Content = { kind: "keep" };

export function writingContract(offers: Offers, opening: Opening): void {
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

  it("leaves the formula of a cell that is kept, that gets a note, or words to choose from", async () => {
    const { host, undo } = await opening(bookOf([[1, "=A1+1", "=A1+2", "=A1+3", "=A1+4"]]));
    const all = block(0, 0, 1, 5);
    const formulas = ["", "=A1+1", "=A1+2", "=A1+3", "=A1+4"];
    await done(host, set(all, [[value(10), ...formulas.slice(1).map(() => keep)]]));
    await done(host, { do: "add-note", block: block(0, 2), text: "Litres." });
    await done(host, { do: "offer-words", block: block(0, 3), words: ["low", "high"] });
    await done(host, set(block(0, 1, 1, 3), [[keep, keep, keep]]));
    await done(host, set(block(0, 0), [[value(20)]]));
    const found = await cells(host, all);
    expect(found.formulas).toEqual([formulas]);
    expect(found.values).toEqual([[20, 21, 22, 23, 24]]);
    await undo();
    expect((await cells(host, all)).values).toEqual([[10, 11, 12, 13, 14]]);
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
      { do: "print-area", block: block(0, 0, 2, 2, "Gauges"), landscape: true },
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

  it("draws a chart with its figures in one undo, or says that it has none and writes nothing", async () => {
    const { host, undo } = await opening(bookOf([[1, 2]]));
    const before = await cells(host, block(0, 0, 4, 2));
    const steps: Step[] = [
      set(block(1, 0, 1, 2), [[value(3), formula("=2*A2")]]),
      {
        do: "add-chart",
        sheet: "Log",
        kind: "lines",
        title: "Level",
        acrossTitle: "Hours",
        upTitle: "Litres",
        across: block(0, 0, 2),
        lines: [{ name: "Tank", values: block(0, 1, 2) }],
        place: block(5, 0, 10, 4),
      },
    ];
    expect(await host.capabilities()).toMatchObject({ hasCharts: offers.charts });
    const outcome = await host.write("Test", steps);
    if (offers.charts) {
      expect(outcome).toBeUndefined();
      expect((await cells(host, block(1, 0, 1, 2))).values).toEqual([[3, 6]]);
      await undo();
    } else expect(outcome).toMatchObject({ kind: "fault", code: "not-offered" });
    expect(await cells(host, block(0, 0, 4, 2))).toEqual(before);
  });

  it("does nothing when one of its steps cannot be done", async () => {
    const { host, undo } = await opening(logbook);
    await done(host, set(block(8, 0), [[value("mark")]]));
    const all = block(0, 0, 9, 5);
    const before = await cells(host, all);
    const hopeless: Step[][] = [
      [set(block(2, 0), [[value("lost")]]), { do: "add-sheet", name: "Other sheet" }],
      [set(block(2, 0), [[value("lost")]]), { do: "grow-table", name: "No", block: block(1, 0) }],
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
}

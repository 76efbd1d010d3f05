import { afterEach, describe, expect, it } from "vitest";
import { hostContract } from "./contract";
import { ExcelHost, excelHost } from "../../src/host/excel";
import type { MemoryBook } from "./memory/book";
import type { Block, Chart, Decoration, Step } from "../../src/sheet/port";
import type { Book } from "../../src/sheet/book";
import { ExcelStandIn, installExcel } from "./excel/stand-in";
import { memoryBook } from "./open-memory";

hostContract(
  "the spreadsheet program",
  { protection: true, filters: true, charts: true, cleanFailures: false },
  (book) => {
    const standIn = new ExcelStandIn(memoryBook(book));
    installExcel(standIn);
    const { model } = standIn;
    return Promise.resolve({
      host: new ExcelHost(),
      undo: () => Promise.resolve(standIn.undo()),
      redo: () => Promise.resolve(standIn.redo()),
      select: (block) => Promise.resolve(standIn.select(block)),
      protect: (name) => {
        for (const sheet of model.book.sheets) if (sheet.name === name) sheet.isProtected = true;
        return Promise.resolve();
      },
      filter: (name) => {
        for (const table of model.book.tables) if (table.name === name) table.isFiltered = true;
        return Promise.resolve();
      },
      close: () => expect(standIn.misuses).toEqual([]),
    });
  },
);

const book: Book = {
  name: "test",
  sheets: [
    {
      name: "Log",
      rows: [
        [{ value: "Lot" }, { value: "Twice" }],
        [{ value: "=A" }, { formula: "=1+1", format: "0.0" }],
      ],
      columnWidths: [],
      tables: [{ name: "Lots", row: 0, column: 0, rows: 2, columns: 2 }],
      frozenRows: 0,
    },
  ],
};
const cell = (row: number, column: number, sheet = "Log"): Block => ({
  sheet,
  row,
  column,
  rows: 1,
  columns: 1,
});
const put = (block: Block, value: string): Step => ({
  do: "set-cells",
  block,
  contents: [[{ kind: "value", value }]],
});
const chart: Chart = {
  sheet: "Log",
  kind: "lines",
  title: "='Log'!$A$1",
  acrossTitle: "Along",
  upTitle: "Up",
  across: { ...cell(1, 0), rows: 2 },
  lines: [
    { name: "one", values: { ...cell(1, 1), rows: 2 } },
    { name: "two", values: { ...cell(1, 2), rows: 2 } },
  ],
  place: { ...cell(4, 0), rows: 10, columns: 4 },
};
/** What counts. */
const counting: Step[] = [
  put(cell(1, 0), "changed"),
  put(cell(1, 1), "changed too"),
  { do: "grow-table", name: "Lots", block: { ...cell(0, 0), rows: 3, columns: 2 } },
  put(cell(2, 0), "new"),
  { do: "add-sheet", name: "More" },
  put(cell(0, 0, "More"), "new"),
];
const decorations: readonly (readonly [Decoration, RegExp, Step])[] = [
  ["add-chart", /^(?:series|legend)\./, { do: "add-chart", ...chart }],
  ["add-note", /^notes\.add/, { do: "add-note", block: cell(0, 0), text: "Which lot." }],
  ["offer-words", /^dataValidation\./, { do: "offer-words", block: cell(1, 0), words: ["a"] }],
  ["set-width", /columnWidth/, { do: "set-width", sheet: "More", column: 0, characters: 9 }],
  ["freeze-rows", /^freezePanes\./, { do: "freeze-rows", sheet: "More", rows: 1 }],
  ["print-area", /^pageLayout\./, { do: "print-area", block: cell(0, 0), landscape: true }],
  ["select", /select/, { do: "select", block: cell(1, 0) }],
];
const steps: Step[] = [...counting, ...decorations.map(([, , step]) => step)];

/** What a person sees of a workbook. */
const seen = ({ sheets, tables }: MemoryBook) => ({
  tables,
  sheets: sheets.map(({ name, cells, charts }) => ({
    name,
    charts,
    cells: Object.entries(cells).filter(([, { value, formula }]) => value !== "" || formula !== ""),
  })),
});

/** What its cells and tables hold, whatever they look like. */
const held = ({ sheets, tables }: MemoryBook) => ({
  tables,
  sheets: sheets.map(({ name, cells }) => [
    name,
    Object.entries(cells)
      .filter(([, { value, formula }]) => value !== "" || formula !== "")
      .map(([place, { value, formula }]) => [place, value, formula]),
  ]),
});

describe("writing to the spreadsheet program", () => {
  const opened: ExcelStandIn[] = [];
  const opening = (): ExcelStandIn => {
    const standIn = new ExcelStandIn(memoryBook(book));
    installExcel(standIn);
    opened.push(standIn);
    return standIn;
  };
  afterEach(() => {
    for (const { misuses } of opened.splice(0)) expect(misuses).toEqual([]);
  });

  it("is one undo record without an undo group, and waits for a cell that is being edited", async () => {
    const standIn = opening();
    const before = seen(structuredClone(standIn.model.book));
    expect(await new ExcelHost().write("Test", steps)).toBeUndefined();
    expect(new Set(standIn.options.map((each) => JSON.stringify(each)))).toEqual(
      new Set(['{"delayForCellEdit":true}']),
    );
    expect(standIn.undoRecords).toBe(1);
    standIn.undo();
    expect(seen(standIn.model.book)).toEqual(before);
  });

  it("puts everything back when it fails at any change that counts", async () => {
    const whole = opening();
    await new ExcelHost().write("Test", counting);
    expect(whole.changes).toBeGreaterThanOrEqual(counting.length);
    for (let at = 1; at <= whole.changes; at += 1) {
      const standIn = opening();
      const before = seen(structuredClone(standIn.model.book));
      standIn.failing = { at, code: "GeneralException" };
      expect(await new ExcelHost().write("Test", counting)).toMatchObject({ code: "failed" });
      expect(seen(standIn.model.book)).toEqual(before);
    }
  });

  it("puts everything back in a run of its own", async () => {
    const standIn = opening();
    const before = seen(structuredClone(standIn.model.book));
    standIn.failing = { at: 4, code: "GeneralException" };
    await new ExcelHost().write("Test", counting);
    // Reading what is there, writing, going back.
    expect(standIn.options).toHaveLength(3);
    expect(seen(standIn.model.book)).toEqual(before);
  });

  it.each(decorations)(
    "keeps a record although %s fails, and says that it did",
    async (kind, what) => {
      const whole = opening();
      await new ExcelHost().write("Test", counting);
      const wanted = held(whole.model.book);
      const standIn = opening();
      standIn.broken = { what, code: "GeneralException" };
      expect(await new ExcelHost().write("Test", steps)).toEqual({
        kind: "shortfall",
        missing: [kind],
      });
      expect(held(standIn.model.book)).toEqual(wanted);
      const drawn = standIn.model.book.sheets.flatMap(({ charts }) => charts);
      expect(drawn).toHaveLength(kind === "add-chart" ? 0 : 1);
    },
  );

  it("asks an older program for nothing that it has not", async () => {
    const standIn = opening();
    standIn.model.newest = 13;
    const follows = { ...chart, acrossTitle: "='Log'!$A$1" };
    const wanted: Step[] = [...steps, { do: "add-chart", ...follows }];
    expect(await new ExcelHost().write("Test", wanted)).toBeUndefined();
    expect(standIn.model.book.sheets[0]?.charts).toMatchObject([{}, { acrossTitle: "" }]);
  });

  it("draws a chart from the cells it is given, and leaves the one that was there on the way back", async () => {
    const standIn = opening();
    await new ExcelHost().write("Test", [{ do: "add-chart", ...chart }]);
    const drawn = () => standIn.model.book.sheets[0]?.charts;
    expect(drawn()).toMatchObject([chart]);
    const again: Step[] = [
      { do: "add-chart", ...chart, title: "Second" },
      { do: "add-sheet", name: "Log" },
    ];
    expect(await new ExcelHost().write("Test", again)).toMatchObject({ code: "name-taken" });
    expect(drawn()).toMatchObject([chart]);
  });

  it("writes a block of formulas that look alike in a few calls, whatever its size", async () => {
    const standIn = opening();
    const rows = Array.from({ length: 50 }, (_, row) =>
      Array.from({ length: 50 }, (__, column) => ({
        kind: "formula" as const,
        formula: `=${row}+${column}`,
        format: "0.0",
        style: "calculated" as const,
      })),
    );
    const block = { ...cell(0, 0), rows: 50, columns: 50 };
    await new ExcelHost().write("Test", [{ do: "set-cells", block, contents: rows }]);
    expect(standIn.changes).toBeLessThan(10);
    const [sheet] = standIn.model.book.sheets;
    expect(sheet?.cells["49,48"]).toMatchObject({ formula: "=49+48", format: "0.0" });
  });

  it("never takes a sheet away that was there before", async () => {
    const standIn = opening();
    const again: Step[] = [put(cell(1, 0), "lost"), { do: "add-sheet", name: "Log" }];
    expect(await new ExcelHost().write("Test", again)).toMatchObject({ code: "name-taken" });
    expect(standIn.model.book.sheets.map(({ name }) => name)).toEqual(["Log"]);
    expect(standIn.model.book.sheets[0]?.cells["1,0"]?.value).toBe("=A");
  });

  it("says so when it cannot put everything back", async () => {
    const standIn = opening();
    standIn.failing = { at: 3, code: "GeneralException", for: 50 };
    expect(await new ExcelHost().write("Test", counting)).toMatchObject({ code: "half-done" });
  });

  it("tells the faults of the program apart", async () => {
    const codes = {
      AccessDenied: "sheet-protected",
      InvalidOperationInCellEditMode: "being-edited",
      ItemAlreadyExists: "name-taken",
      ApiNotFound: "not-offered",
      UndoNotSupported: "not-undoable",
      RequestPayloadSizeLimitExceeded: "too-large",
      ResponsePayloadSizeLimitExceeded: "too-large",
      ServiceNotAvailable: "busy",
      SomethingElse: "failed",
    };
    for (const [code, expected] of Object.entries(codes)) {
      opening().failing = { at: 1, code };
      expect(await new ExcelHost().write("Test", counting)).toMatchObject({ code: expected });
    }
  });

  it("tells when results were worked out, until it is told to stop", async () => {
    const standIn = opening();
    const heard: string[] = [];
    const stop = new ExcelHost().watch(({ event }) => heard.push(event));
    await new ExcelHost().write("Test", [put(cell(1, 0), "changed")]);
    expect(heard).toEqual(["change", "calculation"]);
    stop();
    await new ExcelHost().read([{ ask: "sheets" }]);
    await new ExcelHost().write("Test", [put(cell(1, 0), "again")]);
    expect(heard).toHaveLength(2);
    expect(standIn.misuses).toEqual([]);
  });

  it("knows a workbook that takes no changes", async () => {
    opening().model.book.isReadOnly = true;
    expect(await new ExcelHost().capabilities()).toMatchObject({ canWrite: false });
  });
});

describe("starting inside the spreadsheet program", () => {
  const wait = 20;
  const ready = (answer: Promise<unknown>): void => {
    installExcel(new ExcelStandIn(memoryBook(book)));
    Object.assign(Office, { onReady: () => answer });
  };

  it("gives a host once the program is ready", async () => {
    ready(Promise.resolve({ host: "Excel" }));
    const host = await excelHost(wait);
    expect(await host?.capabilities()).toMatchObject({ program: "the spreadsheet program" });
  });

  it("gives none outside it, in another program, or when nothing answers", async () => {
    ready(Promise.resolve({ host: null }));
    expect(await excelHost(wait)).toBeUndefined();
    ready(Promise.resolve({ host: "Word" }));
    expect(await excelHost(wait)).toBeUndefined();
    ready(new Promise(() => undefined));
    expect(await excelHost(wait)).toBeUndefined();
    Reflect.deleteProperty(globalThis, "Office");
    expect(await excelHost(wait)).toBeUndefined();
  });
});

describe("the file of the spreadsheet program", () => {
  const slices = [
    [1, 2, 3],
    [4, 5],
  ];
  const install = (failing: boolean): { closed: number } => {
    const told = { closed: 0 };
    installExcel(new ExcelStandIn(memoryBook(book)));
    const done = (value: unknown) => ({ status: "succeeded", value });
    const file = {
      size: 5,
      sliceCount: 2,
      getSliceAsync: (index: number, back: (result: unknown) => void) => {
        const data = slices[index] ?? [];
        back(
          failing
            ? { status: "failed", error: { message: "gone" } }
            : done({ data, size: data.length }),
        );
      },
      closeAsync: () => (told.closed += 1),
    };
    Object.assign(Office, {
      FileType: { Compressed: "compressed" },
      AsyncResultStatus: { Succeeded: "succeeded" },
      context: {
        ...Office.context,
        document: {
          getFileAsync: (_: string, back: (result: unknown) => void) => back(done(file)),
        },
      },
    });
    return told;
  };

  it("is put together from its slices, and closed", async () => {
    const told = install(false);
    expect(await new ExcelHost().fileBytes()).toEqual(new Uint8Array([1, 2, 3, 4, 5]));
    expect(told.closed).toBe(1);
  });

  it("is a fault, and closed all the same, when a slice does not come", async () => {
    const told = install(true);
    expect(await new ExcelHost().fileBytes()).toMatchObject({ kind: "fault", code: "failed" });
    expect(told.closed).toBe(1);
  });
});

describe("a file that the spreadsheet program is to open", () => {
  /** What createWorkbook was given; it fails with this code where one is named. */
  const taking = (code?: string): string[] => {
    const given: string[] = [];
    installExcel(new ExcelStandIn(memoryBook(book)));
    Object.assign(Excel, {
      createWorkbook: (text: string) => {
        given.push(text);
        return code === undefined
          ? Promise.resolve()
          : Promise.reject(Object.assign(new Error(code), { code }));
      },
    });
    return given;
  };

  it("is handed over as base64, whatever its length", async () => {
    for (const length of [0, 1, 2, 3, 0x7fff, 0x8000, 0x8001, 100_000]) {
      const given = taking();
      const bytes = Uint8Array.from({ length }, (_, place) => (place * 7) % 256);
      expect(await new ExcelHost().openFile(bytes)).toBeUndefined();
      expect(given).toEqual([Buffer.from(bytes).toString("base64")]);
    }
  });

  it("is a fault that says which, where it does not open", async () => {
    taking("RequestPayloadSizeLimitExceeded");
    const found = await new ExcelHost().openFile(new Uint8Array(3));
    expect(found).toMatchObject({ kind: "fault", code: "too-large" });
  });
});

describe("what the spreadsheet program can do with files", () => {
  it.each([
    ["Mac", 13, { opensFiles: true, savesFiles: false }],
    ["PC", 13, { opensFiles: true, savesFiles: true }],
    ["OfficeOnline", 7, { opensFiles: false, savesFiles: true }],
  ] as const)(
    "is told by where it runs and what it names: %s, ExcelApi 1.%d",
    async (at, newest, can) => {
      const standIn = new ExcelStandIn(memoryBook(book));
      standIn.model.newest = newest;
      installExcel(standIn);
      Object.assign(Office.context, { platform: at });
      expect(await new ExcelHost().capabilities()).toMatchObject(can);
    },
  );

  it("is not to hand out its own where it does not name that set: it is not even asked", async () => {
    installExcel(new ExcelStandIn(memoryBook(book)));
    Object.assign(Office.context, { requirements: { isSetSupported: () => false } });
    expect(await new ExcelHost().capabilities()).toMatchObject({ hasFileBytes: false });
    expect(await new ExcelHost().fileBytes()).toMatchObject({ kind: "fault", code: "not-offered" });
  });
});

describe("what is printed in the spreadsheet program", () => {
  it.each([
    ["one page, upright", { landscape: false }],
    ["one page, on its side", { landscape: true }],
    ["two pages, of which the second begins at a row", { landscape: false, secondPage: 1 }],
  ])("is a block on %s", async (_, pages) => {
    const standIn = new ExcelStandIn(memoryBook(book));
    installExcel(standIn);
    const printed = { ...cell(0, 0), rows: 2, columns: 2 };
    const step: Step = { do: "print-area", block: printed, ...pages };
    expect(await new ExcelHost().write("Print", [step])).toBeUndefined();
    expect(standIn.model.book.sheets[0]?.print).toEqual({ block: printed, ...pages });
    expect(standIn.misuses).toEqual([]);
  });
});

/** Sorting, against a model of its own: rows as plain values, put in order by inserting one by one. */
import { ICommandService, RedoCommand, UndoCommand } from "@univerjs/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CellPlace } from "../../../src/sheet/area";
import { isRefused } from "../../../src/sheet/refusal";
import type { GivenCell } from "../../../src/workbench/engine/cells";
import { cellName } from "../../../src/sheet/cell-name";
import { doSort } from "../../../src/workbench/sorting/do-sort";
import { type Direction, sortedOrder } from "../../../src/workbench/sorting/order";
import { planSort } from "../../../src/workbench/sorting/plan-sort";
import { type Edit, newXlsx, isFileProblem, patchXlsx } from "../../../src/xlsx";
import { partsOf } from "../../xlsx/files";
import { type FileInGrid, inGrid, opened } from "../file";

const sortIn = async (
  file: FileInGrid,
  place: CellPlace,
  direction: Direction,
): Promise<string> => {
  const terms = { cells: file.grid.cells, holding: file.holding, fixed: undefined };
  const plan = planSort(terms, place, direction);
  if (isRefused(plan)) return plan.sentence;
  doSort(file.grid.injector, file.grid.cells, plan);
  await file.grid.computed();
  return "";
};

type Typed = string | number | null;

/** A file of one sheet, texts with an equals sign as formulas, with a fill for rows that are told. */
function fileOf(
  rows: readonly (readonly Typed[])[],
  { table, red = [] }: { table?: string; red?: readonly number[] } = {},
): Uint8Array {
  const made = newXlsx({
    name: "t",
    sheets: [{ name: "Log", rows: [], columnWidths: [], tables: [], frozenRows: 0 }],
  });
  if (isFileProblem(made)) throw new Error("not made");
  const cells = rows.flatMap((cells, row) =>
    cells.flatMap((typed, column): Edit[] => {
      if (typed === null) return [];
      const content =
        typeof typed === "string" && typed.startsWith("=")
          ? ({ kind: "formula", formula: typed, result: undefined } as const)
          : ({ kind: "value", value: typed } as const);
      const look = red.includes(row) ? { look: { fill: "#ff0000" } } : {};
      return [{ do: "set-cell", sheet: "Log", row, column, content, ...look }];
    }),
  );
  const area = { row: 0, column: 0, rows: rows.length, columns: rows[0]?.length ?? 0 };
  const tables: Edit[] =
    table === undefined ? [] : [{ do: "add-table", sheet: "Log", name: table, area }];
  const file = patchXlsx(made, [
    ...cells.filter((e) => e.do === "set-cell" && e.row === 0),
    ...tables,
    ...cells,
  ]);
  if (isFileProblem(file)) throw new Error(JSON.stringify(file));
  return file;
}

/** What stands in the sheet, formulas as such. */
function standing(bytes: Uint8Array, rows: number, columns: number): unknown[][] {
  const sheet = opened(bytes).sheets.find(({ name }) => name === "Log");
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => {
      const cell = sheet?.cells.find((each) => each.row === row && each.column === column);
      return cell?.formula ?? cell?.value ?? null;
    }),
  );
}

const log: Typed[][] = [
  ["Lot", "Oil", "Titre", "Twice", "Share"],
  ["NQ-3", "fryer", 2.5, "=C2*2", "=Log[[#This Row],[Titre]]/SUM(C$2:C$5)"],
  ["NQ-1", "Lard", null, "=C3*2", "=Log[[#This Row],[Titre]]/SUM(C$2:C$5)"],
  ["NQ-2", "cod", 0.5, "=C4*2", "=Log[[#This Row],[Titre]]/SUM(C$2:C$5)"],
  ["NQ-4", "fryer", "lost", "=4*2", "=Log[[#This Row],[Titre]]/SUM(C$2:C$5)"],
];

describe("a table sorted by a column", () => {
  it("moves rows whole with their formulas and looks, in the grid and in the file, and undoes in one", async () => {
    await inGrid(fileOf(log, { table: "Log", red: [3] }), async (file) => {
      const before = file.now();
      expect(await sortIn(file, { sheet: "Log", row: 2, column: 2 }, "up")).toBe("");
      const share = log[1]?.[4];
      expect(standing(await file.saved(), 5, 5)).toEqual([
        log[0],
        ["NQ-2", "cod", 0.5, "=C2*2", share],
        ["NQ-3", "fryer", 2.5, "=C3*2", share],
        ["NQ-4", "fryer", "lost", "=4*2", share],
        ["NQ-1", "Lard", null, "=C5*2", share],
      ]);
      const saved = opened(await file.saved());
      const fills = saved.sheets[0]?.cells
        .filter(({ look }) => saved.looks[look]?.fill === "#ff0000")
        .map(({ row, column }) => cellName(row, column));
      expect(fills).toEqual(["A2", "B2", "C2", "D2", "E2"]);
      const commands = file.grid.injector.get(ICommandService);
      expect(file.grid.value({ sheet: "Log", row: 1, column: 4 })).toBeCloseTo(0.5 / 3, 12);
      await commands.executeCommand(UndoCommand.id);
      await file.grid.computed();
      expect((await file.edits()).edits).toEqual([]);
      expect(file.now().sheets[0]?.cells).toEqual(before.sheets[0]?.cells);
      await commands.executeCommand(RedoCommand.id);
      await file.grid.computed();
      expect(standing(await file.saved(), 5, 3)[1]).toEqual(["NQ-2", "cod", 0.5]);
    });
  });

  it("takes notes, links and words of the row along, and leaves what hangs elsewhere", async () => {
    const note = (row: number, text: string): Edit => ({
      do: "add-note",
      sheet: "Log",
      row,
      column: 0,
      text,
    });
    const noted = patchXlsx(fileOf(log, { table: "Log" }), [
      note(0, "heading"),
      note(1, "of NQ-3"),
      note(3, "of NQ-2"),
    ]);
    if (isFileProblem(noted)) throw new Error("not noted");
    await inGrid(noted, async (file) => {
      expect(await sortIn(file, { sheet: "Log", row: 1, column: 0 }, "down")).toBe("");
      const saved = await file.saved();
      const sheet = opened(saved).sheets[0];
      const lotOf = (row: number) =>
        sheet?.cells.find((cell) => cell.row === row && cell.column === 0)?.value;
      const told = (sheet?.notes ?? []).map(({ row, text }) => `${String(lotOf(row))}: ${text}`);
      expect(told.sort()).toEqual(["Lot: heading", "NQ-2: of NQ-2", "NQ-3: of NQ-3"]);
      const boxes = partsOf(saved)["xl/drawings/vmlDrawing1.vml"] ?? "";
      const rows = [...boxes.matchAll(/<x:Row>(\d+)</g)].map(([, row]) => Number(row));
      expect(rows.sort()).toEqual((sheet?.notes ?? []).map(({ row }) => row).sort());
    });
  });

  it("refuses, with the reason and before anything is done, what would tear something", async () => {
    const rows = (formula: string): Typed[][] => [
      ["A", "B"],
      [2, formula],
      [1, 5],
      [3, 6],
    ];
    const said = async (bytes: Uint8Array, place: Partial<CellPlace> = {}): Promise<string> => {
      let sentence = "";
      await inGrid(bytes, async (file) => {
        sentence = await sortIn(file, { sheet: "Log", row: 1, column: 0, ...place }, "up");
        expect((await file.edits()).edits).toEqual([]);
      });
      return sentence;
    };
    expect(await said(fileOf(rows("=A3*2")))).toMatch(/formula in B2 refers to A3, in another row/);
    expect(await said(fileOf(rows("=SEQUENCE(2)")))).toMatch(
      /formula in B2 is not worked out here/,
    );
    expect(
      await said(
        fileOf([
          ["A", 1],
          [2, 3],
        ]),
      ),
    ).toMatch(/^Sorting goes by headings/);
    expect(await said(fileOf(rows("=1")), { row: 30, column: 9 })).toMatch(/^Sorting goes by/);
  });

  it("leaves a row that adds up, and rows that nobody began, at the end", async () => {
    const block: Typed[][] = [
      ["A", "B"],
      [2, "=A2*2"],
      [1, "=A3*2"],
      ["sum", "=SUM(B2:B3)"],
    ];
    await inGrid(fileOf(block), async (file) => {
      expect(await sortIn(file, { sheet: "Log", row: 1, column: 1 }, "up")).toBe("");
      expect(standing(await file.saved(), 4, 2)).toEqual([
        ["A", "B"],
        [1, "=A2*2"],
        [2, "=A3*2"],
        ["sum", "=SUM(B2:B3)"],
      ]);
    });
    const waiting: Typed[][] = [
      ["A", "B"],
      [2, "=A2*2"],
      [null, "=A3*2"],
      [1, "=A4*2"],
    ];
    await inGrid(fileOf(waiting, { table: "Log" }), async (file) => {
      expect(await sortIn(file, { sheet: "Log", row: 1, column: 1 }, "down")).toBe("");
      expect(standing(await file.saved(), 4, 1).flat()).toEqual(["A", 2, 1, null]);
    });
  });

  it("keeps what refers to other sheets or to fixed cells, and distances that all rows share", async () => {
    const block: Typed[][] = [
      ["A", "B", "C", "D"],
      [3, "=Log!A2+$A$2", "=SUM(A$2:A2)", "=A1"],
      [1, "=Log!A3+$A$2", "=SUM(A$2:A3)", "=A2"],
      [2, "=Log!A4+$A$2", "=SUM(A$2:A4)", "=A3"],
    ];
    await inGrid(fileOf(block), async (file) => {
      expect(await sortIn(file, { sheet: "Log", row: 1, column: 0 }, "up")).toBe("");
      const sorted = block.map((row) => row.slice(1));
      expect(standing(await file.saved(), 4, 4).map((row) => row.slice(1))).toEqual(sorted);
    });
  });
});

/** What people write into a column, and what formulas leave there. */
const key: fc.Arbitrary<GivenCell> = fc.oneof(
  fc.constant(null),
  fc.constantFrom("", "a", "A", "b", "ä", "10", "9", "Z", "é", "E", "fryer oil", "Fryer oil"),
  fc.double({ noNaN: true }),
  fc.integer({ min: -3, max: 3 }),
  fc.boolean(),
  fc.constant({ type: "Error" as const, basicValue: "#N/A" }),
);

const kind = (value: GivenCell): string =>
  value === null || value === "" ? "blank" : typeof value === "object" ? "error" : typeof value;

/** May b stand right behind a? Said otherwise than in the code: as a list of what follows what. */
function mayFollow(a: GivenCell, b: GivenCell, direction: Direction): boolean {
  const kinds = ["number", "string", "boolean", "error"];
  const run = direction === "up" ? [...kinds, "blank"] : [...kinds.reverse(), "blank"];
  const [x, y] = [run.indexOf(kind(a)), run.indexOf(kind(b))];
  if (x !== y) return x < y;
  if (kind(a) === "blank" || kind(a) === "error") return true;
  const [low, high] = direction === "up" ? [a, b] : [b, a];
  if (typeof low === "string" && typeof high === "string")
    return low.toLowerCase().localeCompare(high.toLowerCase(), "en-GB") <= 0;
  return Number(low) <= Number(high);
}

describe("the order of rows", () => {
  const rows = fc.array(fc.record({ key, isWaiting: fc.boolean() }), { maxLength: 30 });
  const direction = fc.constantFrom<Direction>("up", "down");

  it("has every row once, each neighbour in its turn, those that wait last, equals as they were", () => {
    fc.assert(
      fc.property(rows, direction, (given, way) => {
        const order = sortedOrder(given, way);
        expect([...order].sort((a, b) => a - b)).toEqual(given.map((_, index) => index));
        for (let place = 1; place < order.length; place += 1) {
          const [one, other] = [order[place - 1] ?? 0, order[place] ?? 0];
          const [a, b] = [given[one], given[other]];
          if (!a || !b) continue;
          if (a.isWaiting !== b.isWaiting) expect(b.isWaiting).toBe(true);
          else if (a.isWaiting) expect(one).toBeLessThan(other);
          else {
            expect(mayFollow(a.key, b.key, way)).toBe(true);
            if (mayFollow(b.key, a.key, way)) expect(one).toBeLessThan(other);
          }
        }
      }),
    );
  });

  it("is the same when it is asked for twice", () => {
    fc.assert(
      fc.property(rows, direction, (given, way) => {
        const once = sortedOrder(given, way).flatMap((from) => given[from] ?? []);
        expect(sortedOrder(once, way)).toEqual(once.map((_, index) => index));
      }),
    );
  });
});

/** Formulas that a person fills down in a log, each for its own row. */
const perRow = [
  (row: number) => `=C${String(row)}*2`,
  (row: number) => `=IF($C${String(row)}="",0,A${String(row)}&"-"&C$2)`,
  () => "=Log[[#This Row],[C]]+$A$2",
  () => "=SUM($C:$C)",
];

describe("any table", () => {
  it("sorted in the grid and saved has the same rows, each whole, whatever stands in it", async () => {
    const typed = fc.oneof(
      fc.constant(null),
      fc.integer({ min: -9, max: 9 }),
      fc.constantFrom("a", "b", "Lot 3"),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(typed, typed), { minLength: 1, maxLength: 8 }),
        fc.constantFrom(...perRow),
        fc.constantFrom(0, 2, 3),
        fc.constantFrom<Direction>("up", "down"),
        async (pairs, formula, column, way) => {
          const body = pairs.map(([a, c], index): Typed[] => [
            a,
            `row ${String(index)}`,
            c,
            formula(index + 2),
          ]);
          const all = [["A", "B", "C", "D"], ...body];
          await inGrid(fileOf(all, { table: "Log" }), async (file) => {
            expect(await sortIn(file, { sheet: "Log", row: 1, column }, way)).toBe("");
            const after = standing(await file.saved(), all.length, 4).slice(1);
            const names = after.map((row) => row[1]);
            expect([...names].sort()).toEqual(body.map((row) => row[1]).sort());
            for (const [place, row] of after.entries()) {
              const was = Number(String(row[1]).slice(4));
              expect([row[0], row[2]]).toEqual([pairs[was]?.[0], pairs[was]?.[1]]);
              expect(row[3]).toBe(formula(place + 2));
            }
            // worked out where they stand as they are from the beginning in a file of that order
            const fresh = fileOf([all[0] as Typed[], ...(after as Typed[][])], { table: "Log" });
            const shown = after.map((_, place) =>
              file.grid.value({ sheet: "Log", row: place + 1, column: 3 }),
            );
            await inGrid(fresh, ({ grid }) => {
              expect(
                after.map((_, place) => grid.value({ sheet: "Log", row: place + 1, column: 3 })),
              ).toEqual(shown);
            });
          });
        },
      ),
      { numRuns: 12 },
    );
  });
});

/**
 * Acts on rows, columns and sheets as the page does them: in the file, which is shown again. What was held
 * stays held where it is now; any other result that the act makes another is told to the file.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { actWords, byTextWords, lostWords, stepWords } from "../../src/workbench/acts/act-words";
import { cameFrom } from "../../src/workbench/acts/came-from";
import { carriedHolds, carriedState } from "../../src/workbench/acts/carried";
import { lostIn, readByText } from "../../src/workbench/acts/lost";
import { viewAfter } from "../../src/workbench/acts/view-after";
import { ActHistory } from "../../src/workbench/acts/act-history";
import { editsOf } from "../../src/workbench/file/edits-of";
import { arraysOf } from "../../src/workbench/file/opened-file";
import { Holding } from "../../src/workbench/holding/holding";
import { isFileProblem, restructured, sayFile, type StructuralAct } from "../../src/xlsx";
import { partsWith, sheetOf, zipped, type Parts } from "../xlsx/files";
import { type FileInGrid, inGrid, opened } from "./file";

const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packaged = "http://schemas.openxmlformats.org/package/2006/relationships";

/** Two sheets, Data and Sums, of the given rows. */
function book(data: string, sums: string): Uint8Array {
  const sheets = ["Data", "Sums"].map((name, index) => ({
    name,
    id: `rId${index + 1}`,
    n: index + 1,
  }));
  const more: Parts = {
    "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}"><sheets>${sheets.map(({ name, id, n }) => `<sheet name="${name}" sheetId="${n}" r:id="${id}"/>`).join("")}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${packaged}">${sheets.map(({ id, n }) => `<Relationship Id="${id}" Type="${office}/worksheet" Target="worksheets/sheet${n}.xml"/>`).join("")}</Relationships>`,
    "xl/worksheets/sheet2.xml": sheetOf(sums),
  };
  const parts = partsWith(sheetOf(data), more);
  const types = "[Content_Types].xml";
  parts[types] = (parts[types] ?? "").replace(
    "</Types>",
    '<Override PartName="/xl/worksheets/sheet2.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>',
  );
  return zipped(parts);
}

/** What the page does with an act, but for the page; then what it would save. */
async function acted(file: FileInGrid, act: StructuralAct) {
  const { HeadlessWorkbook } = await import("../../src/workbench/engine/headless");
  const { fileSnapshot } = await import("../../src/workbench/file/file-snapshot");
  const { gridState } = await import("../../src/workbench/file/grid-state");
  const { layOutAgain } = await import("../../src/workbench/holding/lay-out");
  const before = opened(await file.saved());
  const after = restructured(before, act);
  if (isFileProblem(after)) throw new Error(sayFile(after));
  const { holding: old } = file;
  const holds = carriedHolds(act, after, old.now(), old.differing());
  const holding = new Holding();
  const shown: { close(): void }[] = [];
  const state = await layOutAgain(
    after,
    { ...holds, isAll: old.isAll },
    holding,
    async (time, terms, isHeld) => {
      shown.pop()?.close();
      const unit = `after-${String(time)}`;
      const grid = await HeadlessWorkbook.openSnapshot(
        fileSnapshot(after, { unit, name: "file", frozenColumns: true, isHeld }),
        { holding, terms },
      );
      shown.push(grid);
      return gridState(grid.injector, grid.cells, holding);
    },
  );
  const agreed = carriedState(act, file.now(), state, after);
  const terms = {
    dates: after.dates,
    arrays: arraysOf(after),
    charactersOf: (pixels: number) => pixels / 8,
  };
  const { edits } = editsOf(agreed, state, terms);
  shown.pop()?.close();
  return { after, edits, holding };
}

const cell = (address: string, formula: string, value: string) =>
  `<c r="${address}"><f>${formula}</f><v>${value}</v></c>`;

describe("an act on a file that is open", () => {
  it("has the file told of each result that the act makes another, and of no other", () =>
    inGrid(
      book(
        '<row r="1"><c r="A1"><v>2</v></c></row>',
        `<row r="1">${cell("A1", "Data!A1*2", "4")}${cell("B1", "SHEETS()", "2")}${cell("C1", "A1+1", "5")}${cell("D1", "IFERROR(A1,7)", "4")}${cell("E1", "1+1", "2")}</row>`,
      ),
      async (file) => {
        const { edits } = await acted(file, { do: "delete-sheet", sheet: "Data" });
        const results = edits.flatMap((edit) =>
          edit.do === "set-cell" && edit.content.kind === "result"
            ? [[edit.sheet, edit.column, edit.content.value]]
            : [],
        );
        // By hand: A1 and C1 are #REF! now, D1 answers 7, E1 is what it was.
        expect(results).toEqual([
          ["Sums", 0, { error: "#REF!" }],
          ["Sums", 2, { error: "#REF!" }],
          ["Sums", 3, 7],
        ]);
      },
    ));

  it("keeps held what was held for its result, under the new name of its sheet, and asks no edit of it", () =>
    inGrid(
      book(
        `<row r="1">${cell("A1", "1+1", "3")}${cell("B1", "A1*2", "6")}${cell("C1", "2+2", "4")}</row>`,
        `<row r="1">${cell("A1", "Data!A1", "3")}</row>`,
      ),
      async (file) => {
        const act = { do: "rename-sheet", sheet: "Data", name: "My data" } as const;
        const { edits, holding } = await acted(file, act);
        expect(edits).toEqual([]);
        expect(holding.reasonAt("My data", 0, 0)?.kind).toBe("own");
        expect(holding.reasonAt("My data", 0, 1)).toBeDefined();
        expect(holding.reasonAt("My data", 0, 2)).toBeUndefined();
        expect(holding.reasonAt("Sums", 0, 0)).toBeDefined();
      },
    ));

  it("counts the formulas that lose what they refer to", () => {
    const before = opened(
      book(
        "",
        `<row r="1">${cell("A1", "Data!A1*2", "4")}${cell("B1", "#REF!+1", "0")}${cell("C1", "A1", "4")}</row>`,
      ),
    );
    const act = { do: "delete-sheet", sheet: "Data" } as const;
    const after = restructured(before, act);
    expect(isFileProblem(after) ? after : lostIn(act, before, after)).toBe(1);
  });
});

describe("where one is after an act", () => {
  const file = opened(book("", ""));
  const view = {
    place: { sheet: "Data", row: 7, column: 2 },
    ...{ rows: 3, columns: 1, firstRow: 5, firstColumn: 0 },
  };
  const top = { rows: 1, columns: 1, firstRow: 0, firstColumn: 0 };

  it("is where one was, under another name of the sheet too", () => {
    const act = { do: "insert-rows", sheet: "Data", before: 3, count: 1 } as const;
    expect(viewAfter(view, act, file, ["Data", "Sums"])).toEqual(view);
    const was = { ...view, place: { ...view.place, sheet: "Old" } };
    const renamed = { do: "rename-sheet", sheet: "Old", name: "Data" } as const;
    expect(viewAfter(was, renamed, file, ["Old", "Sums"])).toEqual(view);
    expect(viewAfter(was, { ...renamed, sheet: "Data", name: "Old" }, file, [])).toEqual(view);
  });

  it("is the sheet beside one that went, and the sheet that came back", () => {
    const act = { do: "delete-sheet", sheet: "Gone" } as const;
    const gone = { ...view, place: { ...view.place, sheet: "Gone" } };
    const at = (sheet: string) => ({ ...top, place: { sheet, row: 0, column: 0 } });
    expect(viewAfter(gone, act, file, ["Data", "Gone", "Sums"])).toEqual(at("Sums"));
    expect(viewAfter(gone, act, file, ["Data", "Sums", "Gone"])).toEqual(at("Data"));
    expect(viewAfter(view, { ...act, sheet: "Sums" }, file, ["Data"])).toEqual(at("Sums"));
  });
});

describe("where a cell stood before an act", () => {
  const lines = ["rows", "columns"] as const;
  const count = fc.integer({ min: 1, max: 5 });
  const place = fc.integer({ min: 0, max: 12 });

  it("is where a list of rows or columns has it, to which the same was done", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...lines),
        fc.boolean(),
        place,
        count,
        place,
        (line, inserts, at, many, other) => {
          const before: (number | undefined)[] = Array.from({ length: 30 }, (_, index) => index);
          const act: StructuralAct = inserts
            ? { do: `insert-${line}`, sheet: "Log", before: at, count: many }
            : { do: `delete-${line}`, sheet: "Log", first: at, count: many };
          before.splice(
            at,
            inserts ? 0 : many,
            ...(inserts ? Array<undefined>(many).fill(undefined) : []),
          );
          before.slice(0, 20).forEach((from, now) => {
            const cell =
              line === "rows" ? { row: now, column: other } : { row: other, column: now };
            const found = cameFrom(act, { sheet: "Log", ...cell });
            expect(line === "rows" ? found?.row : found?.column).toBe(from);
            expect(line === "rows" ? found?.column : found?.row).toBe(
              from === undefined ? undefined : other,
            );
            expect(cameFrom(act, { sheet: "Lots", ...cell })).toEqual({ sheet: "Lots", ...cell });
          });
        },
      ),
    );
  });
});

describe("the files of steps", () => {
  const file = (size: number) => new Uint8Array(size);
  const act = { do: "move-sheet", sheet: "Log", to: 0 } as const;
  const step = { act, says: "The sheet Log is now number 1 of 2." };
  const size = (history: ActHistory, where: "back" | "forth") => history.to(where)?.file.length;

  it("are gone back to and forth in their order, and a new step ends what was taken back", () => {
    const history = new ActHistory().done(file(1), { cells: 3 }).done(file(2), step);
    expect(history.to("back")).toEqual({ file: file(2), step });
    const back = history.back(file(3));
    expect([size(back, "back"), size(back, "forth")]).toEqual([1, 3]);
    expect([back.to("back")?.step, back.to("forth")?.step]).toEqual([{ cells: 3 }, step]);
    const forth = back.forth(file(2));
    expect([size(forth, "back"), forth.counts]).toEqual([2, { back: 2, forth: 0 }]);
    expect(back.done(file(9), step).counts).toEqual({ back: 2, forth: 0 });
  });

  it("are followed by what was typed last, in place of what was taken back before it", () => {
    const back = new ActHistory().done(file(1), step).back(file(2));
    expect(back.next({ file: file(7), step: { cells: 1 } }).counts).toEqual({ back: 0, forth: 1 });
    expect(back.next().counts).toEqual({ back: 0, forth: 0 });
  });

  it("are twenty at the most, and the oldest go for want of room, never the last", () => {
    let many = new ActHistory();
    for (let each = 1; each <= 30; each += 1) many = many.done(file(each), step);
    expect([many.counts.back, size(many, "back")]).toEqual([20, 30]);
    const large = file(150_000_000);
    expect(new ActHistory().done(large, step).done(large, step).counts.back).toBe(1);
  });

  it("are told of by the act, or by how many cells were changed", () => {
    expect(stepWords("back", step)).toBe("Taken back: The sheet Log is now number 1 of 2.");
    expect(stepWords("forth", { cells: 1 })).toBe(
      "Done again: what was typed or changed in 1 cell.",
    );
    expect(stepWords("back", { cells: 0 })).toMatch(/^Taken back: .* width/);
  });
});

describe("what one is told of an act", () => {
  it("names rows by their numbers, columns by their letters, and sheets", () => {
    const on = { sheet: "Titrations" };
    const says = (act: StructuralAct) => actWords(act, 6);
    expect(says({ do: "insert-rows", ...on, before: 4, count: 3 })).toBe(
      "3 rows inserted above row 5 of Titrations.",
    );
    expect(says({ do: "insert-columns", ...on, before: 26, count: 1 })).toBe(
      "1 column inserted before column AA of Titrations.",
    );
    expect(says({ do: "delete-rows", ...on, first: 4, count: 1 })).toBe(
      "Row 5 of Titrations deleted.",
    );
    expect(says({ do: "delete-rows", ...on, first: 4, count: 3 })).toBe(
      "Rows 5 to 7 of Titrations deleted.",
    );
    expect(says({ do: "delete-columns", ...on, first: 1, count: 2 })).toBe(
      "Columns B to C of Titrations deleted.",
    );
    expect(says({ do: "move-sheet", ...on, to: 1 })).toBe(
      "The sheet Titrations is now number 2 of 6.",
    );
    expect(says({ do: "delete-sheet", ...on })).toBe("The sheet Titrations was deleted.");
  });

  it("says before a deletion how many formulas lose something, and that it can be undone", () => {
    const words = lostWords({ do: "delete-rows", sheet: "Lots", first: 3, count: 2 }, 12);
    expect(words).toMatch(/^Delete 2 rows\? 12 formulas .*#REF!.*Undo/);
    expect(lostWords({ do: "delete-sheet", sheet: "Lots" }, 1)).toMatch(
      /^Delete the sheet Lots\? 1 formula /,
    );
  });

  it("says how many formulas go by a text, which does not follow", () => {
    const formulas = opened(
      book(
        "",
        `<row r="1">${cell("A1", "INDIRECT(&quot;Data!A1&quot;)", "4")}${cell("B1", "Data!A1", "0")}</row>`,
      ),
    );
    expect(readByText(formulas)).toBe(1);
    const act = { do: "rename-sheet", sheet: "Data", name: "Log" } as const;
    expect(byTextWords(act, 1)).toContain("1 formula with INDIRECT");
    expect(byTextWords(act, 0)).toBe("");
    expect(byTextWords({ do: "move-sheet", sheet: "Data", to: 1 }, 3)).toBe("");
  });
});

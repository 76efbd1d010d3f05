/** Files of ours as the spreadsheet program leaves them: worked out, held and saved as those of ours are. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { GridState } from "../../src/workbench/file/grid-state";
import { root } from "../rules/sources-of";
import { formulaIn, sheetIn, valueIn } from "../xlsx/answers";
import { partsOf } from "../xlsx/files";
import { asProgramSaves } from "../xlsx/program-form";
import { inGrid, opened } from "./file";

const call = "=TITRE.ACIDVALUE(2.3,0.1,10)";
const names = ["logbook", "what-if", "checks"];
const bytesOf = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(join(root, "sample-workbooks", `${name}.xlsx`)));

/** What the grid shows, and what of it is held or doubted. */
const shown = ({ sheets }: GridState) =>
  sheets.map(({ name, cells }) => [
    name,
    [...cells].map(([row, line]) => [
      row,
      [...line].map(([column, { value, formula, isHeld, isDoubtful }]) => [
        column,
        value,
        formula,
        isHeld,
        isDoubtful,
      ]),
    ]),
  ]);

describe.each(names)("%s as the spreadsheet program saves it", (name) => {
  it("shows the same, and holds and doubts no more", async () => {
    let plain: unknown;
    await inGrid(bytesOf(name), ({ now }) => {
      plain = shown(now());
    });
    await inGrid(asProgramSaves(bytesOf(name)), ({ now }) => {
      expect(shown(now())).toEqual(plain);
    });
  });

  it("is the same file when nothing was edited", async () => {
    await inGrid(asProgramSaves(bytesOf(name)), async ({ edits }) => {
      expect((await edits()).edits).toEqual([]);
    });
  });
});

describe("a logbook that the program saved, edited in the page", () => {
  it("keeps the form of the cells whose results change, and gives it to a new call", async () => {
    const bytes = asProgramSaves(bytesOf("logbook"));
    const marked = (file: Uint8Array): number =>
      Object.entries(partsOf(file))
        .filter(([part]) => part.startsWith("xl/worksheets/"))
        .flatMap(([, text]) => text.match(/ cm="1"/g) ?? []).length;
    const titrations = sheetIn(opened(bytes), "Titrations");
    const titre = titrations.cells.find(({ value }) => value === 2.45);
    if (!titre) throw new Error("no titre of 2.45 mL");
    await inGrid(bytes, async ({ grid, saved }) => {
      await grid.type({ sheet: "Titrations", row: titre.row, column: titre.column }, [[2.55]]);
      await grid.type({ sheet: "Start here", row: 2, column: 6 }, [[call]]);
      const after = await saved();
      expect(marked(after)).toBe(marked(bytes) + 1);
      // By hand: 56.1 x 2.3 x 0.1 / 10 = 1.2903.
      expect(valueIn(opened(after), "G3", "Start here")).toBeCloseTo(1.2903, 12);
      expect(formulaIn(opened(after), "G3", "Start here")).toBe(call);
    });
  });
});

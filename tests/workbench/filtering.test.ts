/** Filters: rows hidden in the grid, told to the file, read again, taken away. */
import { ICommandService, UndoCommand } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { isRefused } from "../../src/sheet/refusal";
import type { Criterion } from "../../src/xlsx";
import { newXlsx, isFileProblem, patchXlsx, type Edit } from "../../src/xlsx";
import { doFilter, filterBlock } from "../../src/workbench/filtering/do-filter";
import { type FileInGrid, inGrid, opened } from "./file";

const rows = [
  ["Lot", "Oil", "Titre"],
  ["NQ-1", "fryer", 2.5],
  ["NQ-2", "lard & cod", 4],
  ["NQ-3", "fryer", 0.5],
  ["NQ-4", "", "lost"],
];

function log(table: boolean): Uint8Array {
  const sheet = { name: "Log", rows: [], columnWidths: [], tables: [], frozenRows: 0 };
  const made = newXlsx({ name: "t", sheets: [sheet] });
  if (isFileProblem(made)) throw new Error("not made");
  const cells = rows.flatMap((each, row) =>
    each.map((value, column): Edit => {
      const content = { kind: "value", value } as const;
      return { do: "set-cell", sheet: "Log", row, column, content };
    }),
  );
  const area = { row: 0, column: 0, rows: rows.length, columns: 3 };
  const tables: Edit[] = table ? [{ do: "add-table", sheet: "Log", name: "Log", area }] : [];
  const file = patchXlsx(made, [...cells, ...tables]);
  if (isFileProblem(file)) throw new Error("not filled");
  return file;
}

const filter = (file: FileInGrid, column: number, criterion: Criterion | undefined) => {
  const block = filterBlock(file.grid.cells, { sheet: "Log", row: 1, column });
  if (isRefused(block)) throw new Error(block.sentence);
  doFilter(file.grid.injector, file.grid.cells, block, column, criterion);
};

const words: Criterion = { kind: "words", words: ["fryer", ""] };
const figures: Criterion = { kind: "figures", atLeast: 1, atMost: 4 };

describe.each([true, false])("filters of a table: %s", (isTable) => {
  it("hide rows here and in the file, come back from it, and are taken away in one", async () => {
    const bytes = log(isTable);
    await inGrid(bytes, async (file) => {
      filter(file, 1, words);
      filter(file, 2, figures);
      const saved = await file.saved();
      const sheet = opened(saved).sheets[0];
      // by hand: lard & cod is no word of it, 0.5 is below 1, lost is no figure
      expect(sheet?.hiddenRows).toEqual([2, 3, 4]);
      const kept = isTable ? sheet?.tables[0]?.filter : sheet?.filter;
      expect(kept?.columns).toEqual([
        { column: 1, criterion: words },
        { column: 2, criterion: figures },
      ]);
      await inGrid(saved, async (again) => {
        expect((await again.edits()).edits).toEqual([]);
        expect([...(again.now().sheets[0]?.hidden ?? [])]).toEqual([2, 3, 4]);
        filter(again, 1, undefined);
        const shown = opened(await again.saved()).sheets[0];
        expect(shown?.hiddenRows).toEqual([]);
        const left = isTable ? shown?.tables[0]?.filter : shown?.filter;
        expect(left?.columns).toEqual([]);
      });
      const commands = file.grid.injector.get(ICommandService);
      await commands.executeCommand(UndoCommand.id);
      expect([...(file.now().sheets[0]?.hidden ?? [])]).toEqual([2]);
      await commands.executeCommand(UndoCommand.id);
      expect((await file.edits()).edits).toEqual([]);
    });
  });
});

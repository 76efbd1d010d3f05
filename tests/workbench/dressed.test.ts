/** Looks, heights and lines given in the grid: told to the file, read again, and LibreOffice's to see. */
import {
  BooleanNumber,
  BorderStyleTypes,
  BorderType,
  ICommandService,
  UndoCommand,
} from "@univerjs/core";
import {
  SetBorderBasicCommand,
  SetRowHeightCommand,
  SetStyleCommand,
  ClearSelectionFormatCommand,
} from "@univerjs/sheets";
import { describe, expect, it } from "vitest";
import { partsOf } from "../xlsx/files";
import { type FileInGrid, fixture, fixtures, inGrid, opened } from "./file";

const range = { startRow: 4, endRow: 5, startColumn: 1, endColumn: 2 };

const does = async (file: FileInGrid, id: string, params: object): Promise<void> => {
  const { names } = file.grid.cells;
  const on = { unitId: names.unit, subUnitId: names.sheetId(names.sheets[0] ?? "") };
  await file.grid.injector.get(ICommandService).executeCommand(id, { ...on, ...params });
  await file.grid.computed();
};

const style = (file: FileInGrid, type: string, value: unknown) =>
  does(file, SetStyleCommand.id, { range, style: { type, value } });

const lookIn = (bytes: Uint8Array, row: number, column: number) => {
  const file = opened(bytes);
  const cell = file.sheets[0]?.cells.find((each) => each.row === row && each.column === column);
  return cell && file.looks[cell.look];
};

const black = { line: "thin", colour: "#14303a" };

describe.each(fixtures.filter((name) => name !== "dynamic" && name !== "pivot"))(
  "in %s",
  (name) => {
    it("lines, underlining, number formats and heights come back, and other sides stay as they were", async () => {
      await inGrid(fixture(name), async (file) => {
        const before = lookIn(fixture(name), 4, 1);
        await style(file, "ul", { s: BooleanNumber.TRUE });
        await style(file, "n", { pattern: "0.000" });
        await does(file, SetBorderBasicCommand.id, {
          ranges: [range],
          value: { type: BorderType.BOTTOM, color: "#14303a", style: BorderStyleTypes.THIN },
        });
        await does(file, SetRowHeightCommand.id, { ranges: [range], value: 40 });
        const saved = await file.saved();
        expect(lookIn(saved, 5, 1)).toMatchObject({ underlined: true, format: "0.000" });
        expect(lookIn(saved, 5, 1)?.borders?.bottom).toEqual(black);
        expect(lookIn(saved, 4, 1)?.borders?.top).toEqual(before?.borders?.top);
        expect(lookIn(saved, 4, 1)?.borders?.left).toEqual(before?.borders?.left);
        const sheet = partsOf(saved)[opened(saved).sheets[0]?.part ?? ""] ?? "";
        // 40 pixels of 96 to the inch, in points of 72
        expect(sheet.match(/<(?:\w+:)?row\b[^>]*\br="[56]"[^>]*/g)?.join()).toMatch(
          /(?=.*\bht="30")(?=.*customHeight="1")/,
        );
        // and what was saved opens with them
        await inGrid(saved, async (again) => {
          await does(again, ClearSelectionFormatCommand.id, { ranges: [range] });
          const bare = lookIn(await again.saved(), 5, 1);
          expect(bare?.underlined).toBeUndefined();
          expect(bare?.borders?.bottom).not.toEqual(black);
        });
      });
    });

    it("undone, leave the very same file", async () => {
      await inGrid(fixture(name), async (file) => {
        await style(file, "ul", { s: BooleanNumber.TRUE });
        await does(file, SetRowHeightCommand.id, { ranges: [range], value: 40 });
        const commands = file.grid.injector.get(ICommandService);
        await commands.executeCommand(UndoCommand.id);
        await commands.executeCommand(UndoCommand.id);
        await file.grid.computed();
        expect((await file.edits()).edits).toEqual([]);
      });
    });
  },
);

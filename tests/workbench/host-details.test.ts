/** What the workbench does beyond the contract of every host. */
import {
  CellValueType,
  EDITOR_ACTIVATED,
  ICommandService,
  IContextService,
  RedoCommand,
} from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { isFault, type Step } from "../../src/sheet/port";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import { planProbe } from "../../src/workbook/planning/plan-probe";
import { openHeadless } from "../../src/workbench/engine/node";
import type { WorkbenchHost } from "../../src/host/workbench";

async function withLogbook(
  test: (host: WorkbenchHost, open: HeadlessWorkbook) => Promise<void>,
): Promise<void> {
  const open = await openHeadless(sampleLogbook());
  const { WorkbenchHost } = await import("../../src/host/workbench");
  try {
    await test(new WorkbenchHost(open.injector), open);
  } finally {
    open.close();
  }
}

const one = { sheet: "Titrations", row: 0, column: 0, rows: 1, columns: 1 };
const title: Step = {
  do: "set-cells",
  block: one,
  contents: [[{ kind: "value", value: "changed" }]],
};

describe("the workbench as a host", () => {
  it("gives a new row of a table the look of the row above", () =>
    withLogbook(async (host, open) => {
      const found = await host.read([{ ask: "table", name: "Titrations" }]);
      const table = found[0];
      if (table?.kind !== "table") throw new Error("no table");
      const { block } = table;
      const grown = { ...block, rows: block.rows + 1 };
      await host.write("Grow", [{ do: "grow-table", name: "Titrations", block: grown }]);
      const { workbook } = open.cells.names;
      const look = (row: number, column: number): unknown =>
        workbook
          .getStyles()
          .getStyleByCell(workbook.getSheetBySheetName(block.sheet)?.getCellRaw(row, column));
      const last = block.row + block.rows - 1;
      for (let column = 0; column < block.columns; column += 1) {
        expect(look(last + 1, column)).toEqual(look(last, column));
        expect(look(last, column)).toBeTruthy();
      }
    }));

  it("shows all readings and slopes of a probe's sheet in one size of letters", () =>
    withLogbook(async (host, open) => {
      const points = Array.from({ length: 9 }, (_, at) => [at, 4 + at * at * 0.3] as const);
      const plan = await planProbe(host, { lot: "NQ-3", points });
      if (!("steps" in plan)) throw new Error(plan.sentence);
      expect(await host.write("Probe", plan.steps)).toBeUndefined();
      const { workbook } = open.cells.names;
      const size = (row: number, column: number): unknown =>
        workbook
          .getStyles()
          .getStyleByCell(workbook.getSheetBySheetName("Probe")?.getCellRaw(row, column))?.fs;
      // the slopes spill over as many rows as there are intervals
      expect(open.cells.spills("Probe")).toMatchObject([{ top: 4, left: 3, right: 4 }]);
      const [slopes] = open.cells.spills("Probe");
      for (let row = 4; row <= (slopes?.bottom ?? 0); row += 1) {
        expect([0, 1, 3, 4].map((column) => size(row, column))).toEqual([11, 11, 11, 11]);
      }
    }));

  it("puts an apostrophe only before a text that would be taken for something else", () =>
    withLogbook(async (host, open) => {
      const texts = ["Lot 7", "quay's", "1/2", "=A1", "true", "'tis", "-", "€ 3", "Ö 12"];
      const block = { ...one, column: 60, columns: texts.length };
      const contents = [texts.map((value) => ({ kind: "value", value }) as const)];
      await host.write("Texts", [{ do: "set-cells", block, contents }]);
      const sheet = open.cells.names.sheet(one.sheet);
      const held = texts.map((_, at) => sheet?.getCellRaw(0, 60 + at));
      expect(held.map((cell) => cell?.v)).toEqual(texts);
      expect(texts.filter((_, at) => held[at]?.t === CellValueType.STRING)).toEqual([
        "Lot 7",
        "quay's",
        "Ö 12",
      ]);
    }));

  it("writes nothing while a cell is being edited", () =>
    withLogbook(async (host, open) => {
      const context = open.injector.get(IContextService);
      context.setContextValue(EDITOR_ACTIVATED, true);
      const result = await host.write("Test", [title]);
      expect(isFault(result) && result.code).toBe("being-edited");
      context.setContextValue(EDITOR_ACTIVATED, false);
      expect(await host.write("Test", [title])).toBeUndefined();
    }));

  it("leaves nothing that could be redone by half after a write that failed", () =>
    withLogbook(async (host, open) => {
      const failed = await host.write("Test", [title, { do: "add-sheet", name: "Batches" }]);
      expect(isFault(failed) && failed.code).toBe("name-taken");
      await open.injector.get(ICommandService).executeCommand(RedoCommand.id);
      expect(open.value(one)).toBe("Titrations");
    }));
});

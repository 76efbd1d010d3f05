/** Our own workbooks, a partner's copy among them, are worked out here: nothing in them is held back. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { unprovenReason } from "../../src/workbench/trust/proven";
import { root } from "../rules/sources-of";
import { cases } from "../wide";
import { inGrid } from "./file";

const names = cases(["checks", "logbook", "old-logbook", "what-if"], ["partner-logbook"]);

/** In the one, words stand where figures belong; in the other, two errors meet in empty rows. */
const doubtful = new Set(["old-logbook", "partner-logbook"]);

describe("every formula of our own workbooks", () => {
  it.each(names)("is one whose result may be saved: %s", (name) => {
    const bytes = new Uint8Array(readFileSync(join(root, "sample-workbooks", `${name}.xlsx`)));
    return inGrid(bytes, ({ now, grid, workbook }) => {
      const { names: ids } = grid.cells;
      const nameRefersTo = (written: string) =>
        workbook.names.find((each) => each.name === written)?.refersTo;
      const held = now().sheets.flatMap((sheet) =>
        [...sheet.cells].flatMap(([row, cells]) =>
          [...cells].flatMap(([column, { formula }]) => {
            if (formula === "") return [];
            const isArray = Boolean(sheet.spills.get(row)?.get(column));
            const place = { unit: ids.unit, sheet: ids.sheetId(sheet.name), row, column };
            const reason = unprovenReason(formula, { isArray, nameRefersTo });
            const isDoubtful = grid.working.doubts.isDoubtful(place);
            return reason === undefined && (!isDoubtful || doubtful.has(name))
              ? []
              : [[formula, reason, isDoubtful]];
          }),
        ),
      );
      expect(held.slice(0, 8)).toEqual([]);
    });
  });
});

/** A program as "Check this Excel" asks it, over a workbook in memory: for the page. */
import { type Fault, fault } from "../../../src/sheet/port";
import type { CheckedProgram } from "../../../src/sheet/port/checked-program";
import type { MemoryHost } from "../../host/memory";

export const programOver = (memory: MemoryHost): CheckedProgram => ({
  facts: () =>
    Promise.resolve({
      kind: "facts",
      version: "16.0.0.1",
      platform: "PC",
      engine: "Edg/120.0",
      decimalMark: ".",
      sets: [{ name: "ExcelApi", newest: "1.17" }],
    }),
  count: () => Promise.resolve({ kind: "counted", charts: 1, notes: undefined, lists: 1 }),
  protect: (sheet, isProtected) => {
    memory.change((book) => {
      for (const each of book.sheets) if (each.name === sheet) each.isProtected = isProtected;
    });
    return Promise.resolve(undefined);
  },
  removeSheets: (names) => {
    memory.change((book) => {
      book.sheets = book.sheets.filter(({ name }) => !names.includes(name));
    });
    return Promise.resolve<undefined | Fault>(undefined);
  },
  openEmpty: () => Promise.resolve(fault("not-offered")),
  listen: () => () => undefined,
  refusals: () => [],
});

import { hostContract } from "./contract";
import { openMemory } from "./open-memory";

hostContract(
  "a workbook in memory",
  { protection: true, filters: true, charts: true, cleanFailures: true },
  (book) => {
    const host = openMemory(book);
    return Promise.resolve({
      host,
      undo: () => Promise.resolve(host.undo()),
      redo: () => Promise.resolve(host.redo()),
      select: (block) => Promise.resolve(host.select(block)),
      protect: (name) =>
        Promise.resolve(
          host.change(({ sheets }) => {
            for (const sheet of sheets) if (sheet.name === name) sheet.isProtected = true;
          }),
        ),
      filter: (name) =>
        Promise.resolve(
          host.change(({ tables }) => {
            for (const table of tables) if (table.name === name) table.isFiltered = true;
          }),
        ),
      close: () => undefined,
    });
  },
);

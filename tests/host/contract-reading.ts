/** What a host answers to each question. */
import { expect, it } from "vitest";
import { block, bookOf, cells, logbook, type Opening, read } from "./contract-parts";

export function readingContract(opening: Opening): void {
  it("answers values, formulas and formats, with empty text where there is nothing", async () => {
    const { host } = await opening(
      bookOf([
        [1.5, null, "=A1*2"],
        ["007", true, "=1/0"],
      ]),
    );
    const found = await cells(host, block(0, 0, 3, 3));
    expect(found.values).toEqual([
      [1.5, "", 3],
      ["007", true, { error: "#DIV/0!" }],
      ["", "", ""],
    ]);
    expect(found.formulas).toEqual([
      ["", "", "=A1*2"],
      ["", "", "=1/0"],
      ["", "", ""],
    ]);
    expect(found.formats[0]).toEqual(["General", "General", "General"]);
  });

  it("answers what cells show without their formulas, an error as an error and a text as a text", async () => {
    const { host } = await opening(bookOf([[1.5, null, "=A1*2"], ["#N/A", true, "=1/0"], ["007"]]));
    const [found, plain, none] = await read(
      host,
      { ask: "values", block: block(0, 0, 2, 3) },
      { ask: "values", block: block(2, 0) },
      { ask: "values", block: block(0, 0, 1, 1, "No such sheet") },
    );
    expect(found).toEqual({
      kind: "values",
      block: block(0, 0, 2, 3),
      values: [
        [1.5, "", 3],
        ["#N/A", true, { error: "#DIV/0!" }],
      ],
    });
    expect(plain).toMatchObject({ values: [["007"]] });
    expect(none).toEqual({ kind: "nothing" });
  });

  it("finds the formulas that show errors, and nothing else", async () => {
    const { host } = await opening(bookOf([["#N/A", "=1/0", 3], [null, "=A2/0"], ["=1+1"]]));
    const [found, none, missing] = await read(
      host,
      { ask: "errors", sheet: "Log" },
      { ask: "errors", sheet: "Other sheet" },
      { ask: "errors", sheet: "No such sheet" },
    );
    const cells = (found?.kind === "areas" ? found.blocks : []).flatMap(({ row, column, rows }) =>
      Array.from({ length: rows }, (_, down) => [row + down, column]),
    );
    expect(cells).toEqual([
      [0, 1],
      [1, 1],
    ]);
    expect(none).toEqual({ kind: "areas", blocks: [] });
    expect(missing).toEqual({ kind: "nothing" });
  });

  it("answers in the order asked, and says where there is nothing", async () => {
    const { host } = await opening(logbook);
    const found = await read(
      host,
      { ask: "table", name: "Nowhere" },
      { ask: "cells", block: block(0, 0, 1, 1, "No such sheet") },
      { ask: "cells", block: block(0, 0) },
    );
    expect(found.map(({ kind }) => kind)).toEqual(["nothing", "nothing", "cells"]);
  });

  it("finds a table by its name in any case, with its headings", async () => {
    const { host } = await opening(logbook);
    const [found] = await read(host, { ask: "table", name: "jetty" });
    expect(found).toEqual({
      kind: "table",
      name: "Jetty",
      block: block(1, 0, 3, 4),
      headings: ["Lot", "Titre 1 mL", "Blank 1 mL", "Corrected"],
      isFiltered: false,
      hasTotals: false,
    });
  });

  it("lists the sheets with what they hold, and the names that are taken", async () => {
    const { host } = await opening(logbook);
    const [sheets, names] = await read(host, { ask: "sheets" }, { ask: "names" });
    expect(sheets).toEqual({
      kind: "sheets",
      isProtected: false,
      sheets: [
        { name: "Log", isProtected: false, used: block(0, 0, 4, 4) },
        { name: "Other sheet", isProtected: false, used: block(0, 0, 1, 1, "Other sheet") },
      ],
    });
    expect(names).toEqual({ kind: "names", tables: ["Jetty"], defined: [] });
  });

  it("answers the active one of the selected cells", async () => {
    const { host, select } = await opening(logbook);
    await select(block(2, 0, 1, 2));
    const [found] = await read(host, { ask: "selection" });
    expect(found).toMatchObject({ block: block(2, 0), values: [["A"]] });
  });
}

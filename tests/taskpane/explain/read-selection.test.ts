import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import type { Host } from "../../../src/sheet/port";
import { readSelection } from "../../../src/taskpane/explain/read-selection";
import type { Book } from "../../../src/sheet/book";
import { explainFormula } from "../../../src/workbook/explain/explain";
import { openMemory } from "../../host/open-memory";

const own = (heading: string) => `Jetty[[#This Row],[${heading}]]`;

const book: Book = {
  name: "jetty",
  sheets: [
    {
      name: "Log",
      rows: [
        [{ value: "Titre mL" }, { value: "Mass g" }, { value: "Acid value" }],
        [
          { value: 2.3 },
          { value: 10 },
          { formula: `=TITRE.ACIDVALUE(${own("Titre mL")},'Bench slip'!A1,${own("Mass g")})` },
        ],
        [{ value: 2.3 }, { value: 10 }, { formula: "=TITRE.ACIDVALUE(A3,Nowhere[x],B3)" }],
      ],
      columnWidths: [],
      tables: [{ name: "Jetty", row: 0, column: 0, rows: 3, columns: 3 }],
      frozenRows: 0,
    },
    { name: "Bench slip", rows: [[{ value: 0.1 }]], columnWidths: [], tables: [], frozenRows: 0 },
  ],
};

/** The host with a cell selected, and how often it was read from. */
function selecting(row: number, column: number) {
  const memory = openMemory(book);
  memory.select({ sheet: "Log", row, column, rows: 1, columns: 1 });
  let reads = 0;
  const host: Pick<Host, "read"> = {
    read: (questions) => {
      reads += 1;
      return memory.read(questions);
    },
  };
  return { host: host as Host, reads: () => reads };
}

async function explained(row: number, column: number) {
  const { host, reads } = selecting(row, column);
  const cell = await readSelection(host);
  if (!cell) throw new Error("nothing was read");
  const calls = explainFormula(cell.formula, cell.lookup);
  if (isProblem(calls)) throw new Error("the formula was not read");
  return { cell, call: calls[0], reads: reads() };
}

describe("reading the selected cell by way of the host", () => {
  it("brings what the formula refers to: columns of its row, and a cell of another sheet", async () => {
    const { cell, call } = await explained(1, 2);
    expect([cell.sheet, cell.address]).toEqual(["Log", "C2"]);
    // By hand: 56.1 x 0.1 x 2.3 / 10.
    expect(call?.answer).toBe(1.2903);
    expect(call?.worked).toBe("56.1 × 0.1 × 2.3 ÷ 10");
  });

  it("asks for everything a round wants in one call: the cell, then tables, then cells", async () => {
    expect((await explained(1, 2)).reads).toBe(3);
  });

  it("says what is known where a table does not exist, and asks no further", async () => {
    const { call, reads } = await explained(2, 2);
    expect(call?.arguments.map(({ isKnown }) => isKnown)).toEqual([true, false, true]);
    expect(call?.answer).toBeUndefined();
    // the cell; then its two neighbours and the table that is not there, together
    expect(reads).toBe(2);
  });

  it("shows a cell without a formula as it is", async () => {
    const { host } = selecting(1, 0);
    expect(await readSelection(host)).toMatchObject({ address: "A2", formula: "", shown: "2.3" });
  });

  it("reads no range of more cells than anybody could look at, and says what it is all the same", async () => {
    const formula = "=TITRE.CORRECTED(A2:XFD1048576)";
    const block = { sheet: "Log", row: 0, column: 0, rows: 1, columns: 1 };
    const asked: string[] = [];
    const host: Pick<Host, "read"> = {
      read: (questions) => {
        asked.push(...questions.map(({ ask }) => ask));
        const cells = { values: [[1]], formulas: [[formula]], formats: [["General"]] };
        return Promise.resolve(questions.map(() => ({ kind: "cells", block, ...cells })));
      },
    };
    const cell = await readSelection(host as Host);
    expect(asked).toEqual(["selection"]);
    const calls = explainFormula(cell?.formula ?? "", cell?.lookup ?? (() => undefined));
    expect(isProblem(calls) ? calls : calls.map(({ answer }) => answer)).toEqual([undefined]);
  });
});

import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import type { Plan, Refusal } from "../../../src/workbook/planning/plan";
import { planTitration } from "../../../src/workbook/planning/record/record-titration";
import type { Host } from "../../../src/sheet/port";
import type { MemoryHost } from "../../host/memory";
import { openMemory } from "../../host/open-memory";
import { planned, recorded } from "../../host/contract-recording";
import { fourthOfMay2026, fryerLot } from "../record/records";
import { type LogbookParts, logbookOf, ourFormula, ourHeadings, rowUnder } from "./logbooks";

const open = (parts: LogbookParts): MemoryHost => openMemory(logbookOf(parts));

const cellUnder = (plan: Plan, heading: string) =>
  plan.cells.find((cell) => cell.heading === heading);

const remarks = (plan: Plan): string[] => plan.remarks.map(({ sentence }) => sentence);

const refusal = async (host: MemoryHost): Promise<Refusal> => {
  const found = await planTitration(host, fryerLot);
  if (found.kind !== "refused") throw new Error("planned");
  return found;
};

/** Of a memory that holds no errors: what is written like one is read as one. */
const withErrors = (host: MemoryHost): Host => ({
  capabilities: () => host.capabilities(),
  write: (label, steps) => host.write(label, steps),
  watch: (heard) => host.watch(heard),
  fileBytes: () => host.fileBytes(),
  openFile: () => host.openFile(),
  read: async (questions) => {
    const found = await host.read(questions);
    if ("code" in found) return found;
    return found.map((each) =>
      each.kind !== "cells"
        ? each
        : {
            ...each,
            values: each.values.map((row) =>
              row.map((value) => (value === "#N/A" ? { error: value } : value)),
            ),
          },
    );
  },
});

const earlier = { Lot: "E-1", "Titre 1 mL": 3, "Titre 2 mL": 3.1, "Blank 1 mL": 0.1 };
const withFormulas = (values: Record<string, string | number>) => ({
  ...values,
  ...Object.fromEntries(
    ourHeadings.filter((each) => ourFormula(each) !== "").map((each) => [each, ourFormula(each)]),
  ),
});

describe("a row in a table of ours", () => {
  it("goes below the last row, and says for each cell what would be there", async () => {
    const host = open({
      headings: ourHeadings,
      rows: [rowUnder(ourHeadings, withFormulas(earlier))],
    });
    const plan = await planned(host, fryerLot);
    expect(plan.summary).toBe("A new row 4 in the table Titrations on the sheet Lab log.");
    expect(plan.mustConfirm).toEqual([]);
    expect(remarks(plan)).toEqual([]);
    expect(cellUnder(plan, "Lot")).toMatchObject({
      address: "'Lab log'!B4",
      now: "",
      shown: "F-207",
      mustConfirm: false,
    });
    expect(cellUnder(plan, "Date")?.shown).toBe("2026-05-04");
    expect(cellUnder(plan, "Titre 1 mL")?.shown).toBe("2.40");
    expect(cellUnder(plan, "Titre 2 mL")).toBeUndefined();
    expect(cellUnder(plan, "Molarity mol/L")?.shown).toBe("0.1000");
    expect(cellUnder(plan, "Omitted")?.shown).toBe("Titre 2 = 2.90 mL: bubble");
    expect(cellUnder(plan, "Corrected titre mL")?.shown).toBe(ourFormula("Corrected titre mL"));
  });

  it("fills an empty row that the table already has, and leaves its waiting formulas", async () => {
    const waiting = rowUnder(ourHeadings, withFormulas({}));
    const host = open({ headings: ourHeadings, rows: [waiting, waiting] });
    const plan = await planned(host, fryerLot);
    expect(plan.summary).toBe("The empty row 3 in the table Titrations on the sheet Lab log.");
    expect(plan.steps.map((step) => step.do)).toEqual(["set-cells", "select"]);
    expect(cellUnder(plan, "FFA %")?.content).toEqual({ kind: "keep" });
    expect(cellUnder(plan, "FFA %")?.shown).toBe(ourFormula("FFA %"));
    expect(await recorded(host, fryerLot)).toMatchObject({ kind: "recorded", differences: [] });
  });

  it("writes its own formulas into the first row of an empty table", async () => {
    const host = open({ headings: ourHeadings });
    const outcome = await recorded(host, fryerLot);
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    if (outcome.kind === "recorded") expect(outcome.results["FFA %"]).toBeTypeOf("number");
  });

  it("shows dates and figures as the row above does", async () => {
    const host = open({
      headings: ourHeadings,
      rows: [rowUnder(ourHeadings, withFormulas({ ...earlier, Date: 46000 }))],
    });
    host.change(({ sheets }) => {
      const above = sheets[0]?.cells["2,0"];
      if (above) above.format = "dd.mm.yy";
    });
    const { content } = cellUnder(await planned(host, fryerLot), "Date") ?? {};
    expect(content).toEqual({ kind: "value", value: fourthOfMay2026, format: "dd.mm.yy" });
  });

  it("gives a figure a number format in a column of text, where it would become text", async () => {
    const host = open({
      headings: ourHeadings,
      rows: [rowUnder(ourHeadings, withFormulas(earlier))],
    });
    host.change(({ sheets }) => {
      for (const cell of Object.values(sheets[0]?.cells ?? {})) cell.format = "@";
    });
    const plan = await planned(host, fryerLot);
    expect(cellUnder(plan, "Titre 1 mL")?.content).toMatchObject({ format: "0.00" });
  });

  it("asks before recording the same titration a second time", async () => {
    const host = open({ headings: ourHeadings });
    await recorded(host, fryerLot);
    const plan = await planned(host, fryerLot);
    expect(plan.mustConfirm).toEqual(["recorded-before"]);
    expect(plan.remarks[0]?.sentence).toBe(
      "Row 3 already holds this titration: same date, same lot, same readings.",
    );
    const other = await planned(host, { ...fryerLot, titres: [exact("2.4"), exact("2.45")] });
    expect(other.mustConfirm).toEqual([]);
  });
});

describe("a row in a table of somebody else's", () => {
  it("is written by heading, in their order and with their spelling", async () => {
    const headings = ["lot ", "Their own", "TITRE 2 ML", "Titre 1 mL", "Mass  g", "Molarity mol/L"];
    const host = open({ headings, rows: [["X", "mine", 1, 2, 3, 0.1]] });
    const plan = await planned(host, fryerLot);
    expect(plan.steps[1]).toMatchObject({
      contents: [
        [
          { value: "F-207" },
          { kind: "keep" },
          { kind: "keep" },
          { value: 2.4 },
          { value: 5.02 },
          { value: 0.1 },
        ],
      ],
    });
  });

  it("says which figures it has no column for, and asks before leaving them out", async () => {
    const headings = ["Lot", "Titre 1 mL", "Titre 2 mL", "Blank 1 mL", "FFA %"];
    const host = open({ headings, rows: [["X", 3, 3.1, 0.1, null]] });
    const plan = await planned(host, fryerLot);
    expect(plan.mustConfirm).toContain("column-missing");
    const said = plan.remarks.map(({ sentence }) => sentence).join(" ");
    expect(said).toContain("no column for Date, Titre 3 mL, Titre 4 mL, Blank 2 mL and");
    expect(said).toContain(
      "lacks the headings ± FFA %, Worth, Corrected titre mL, Acid value mg KOH/g",
    );
  });

  it("keeps a column's own formula, and says so", async () => {
    const headings = ["Lot", "Titre 1 mL", "Titre 2 mL", "Blank 1 mL", "Corrected titre mL"];
    const own = "=SUM(B3:C3)-$D$1";
    const host = open({ headings, rows: [["X", 3, 3.1, 0.1, own]] });
    const plan = await planned(host, fryerLot);
    expect(cellUnder(plan, "Corrected titre mL")?.shown).toBe("=SUM(B4:C4)-$D$1");
    expect(plan.remarks).toContainEqual({
      sentence:
        "Corrected titre mL has another formula in this table: the new row gets the same one as the rows above.",
    });
  });

  it("writes its formula into a column of typed figures too, which stay, and says so", async () => {
    const host = open({
      headings: ourHeadings,
      rows: [rowUnder(ourHeadings, { ...earlier, "FFA %": 1.2 })],
    });
    const plan = await planned(host, fryerLot);
    expect(cellUnder(plan, "FFA %")?.shown).toBe(ourFormula("FFA %"));
    expect(plan.remarks.map(({ sentence }) => sentence)).toContain(
      "FFA % holds typed figures above: they stay, and this row gets the formula.",
    );
    await recorded(host, fryerLot);
    const column = ourHeadings.indexOf("FFA %");
    expect(host.book.sheets[0]?.cells[`2,${column}`]).toMatchObject({ value: 1.2, formula: "" });
  });

  it("writes none of our formulas where the columns it reads stand in another order", async () => {
    const headings = ourHeadings.map((heading) => {
      if (heading === "Titre 5 mL") return "Note";
      return heading === "Note" ? "Titre 5 mL" : heading;
    });
    const plan = await planned(open({ headings }), fryerLot);
    expect(cellUnder(plan, "Corrected titre mL")).toBeUndefined();
    expect(cellUnder(plan, "FFA %")?.shown).toBe(ourFormula("FFA %"));
    expect(remarks(plan)).toContain(
      "Corrected titre mL stays empty: the columns its formula needs are missing or stand in another order.",
    );
  });

  it("goes on with a calculated column of theirs, and leaves a formula that stands alone", async () => {
    const headings = ["Lot", "Titre 1 mL", "Doubled", "Odd"];
    const host = open({
      headings,
      rows: [
        ["X", 1, "=B3*2", null],
        ["Y", 2, "=B4*2", "=1+1"],
      ],
    });
    const plan = await planned(host, fryerLot);
    expect(cellUnder(plan, "Doubled")?.shown).toBe("=B5*2");
    expect(cellUnder(plan, "Odd")).toBeUndefined();
  });

  it("never takes a reading of another row, worked out in its cell, for one of its own", async () => {
    const readings = { Lot: "E-1", "Titre 1 mL": 3, "Titre 5 mL": "=2.4+0.05", "Blank 1 mL": 0.1 };
    const rows = [rowUnder(ourHeadings, withFormulas(readings))];
    const alone = await planned(open({ headings: ourHeadings, rows }), fryerLot);
    expect(cellUnder(alone, "Titre 5 mL")).toBeUndefined();
    const waiting = rowUnder(ourHeadings, { "Titre 5 mL": "=2.5+0.05" });
    const spare = await planned(
      open({ headings: ourHeadings, rows: [...rows, waiting] }),
      fryerLot,
    );
    // that row holds a reading: the next one is taken
    expect(spare.summary).toContain("A new row 5 ");
    expect(cellUnder(spare, "Titre 5 mL")).toBeUndefined();
  });

  it("goes on with a formula that every row has in a column for typing, and says so", async () => {
    const row = rowUnder(ourHeadings, withFormulas({ ...earlier, "Own mass 5 g": "=1+1" }));
    const plan = await planned(open({ headings: ourHeadings, rows: [row, row] }), fryerLot);
    expect(cellUnder(plan, "Own mass 5 g")?.shown).toBe("=1+1");
    expect(plan.remarks.map(({ sentence }) => sentence).join(" ")).toContain("Own mass 5 g has");
  });

  it("puts the figure that was entered where the rows above have a formula, and says so", async () => {
    const headings = ["Lot", "Titre 1 mL", "Molarity mol/L"];
    const host = open({ headings, rows: [["X", 1, "=0.05*2"]] });
    const plan = await planned(host, fryerLot);
    expect(cellUnder(plan, "Molarity mol/L")?.content).toMatchObject({ kind: "value", value: 0.1 });
    expect(remarks(plan)).toContain(
      "Molarity mol/L has a formula in the rows above: this row gets the figure you entered instead.",
    );
  });
});

describe("cells below a table that hold something", () => {
  const below = rowUnder(ourHeadings, { Lot: "a remark", "Titre 6 mL": 9, Note: "=1+1" });
  const rows = [rowUnder(ourHeadings, withFormulas(earlier))];

  it("are named: the row is not free, and one word takes the next that is", async () => {
    const host = open({ headings: ourHeadings, rows, below });
    expect(await refusal(host)).toEqual({
      kind: "refused",
      sentence: 'Row 4 is not free: it holds "a remark", "9", "=1+1". Nothing is written over.',
      hasNextFree: true,
    });
    const plan = await planned(host, fryerLot);
    expect(plan.mustConfirm).toEqual([]);
    expect(plan.summary).toBe(
      "A new row 5 in the table Titrations on the sheet Lab log. Row 4, below it so far, becomes part of it.",
    );
  });

  it("become rows of the table with its formulas, and keep what was typed", async () => {
    const host = open({ headings: ourHeadings, rows, below });
    const outcome = await recorded(host, fryerLot);
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    // By hand: 7.25 / 3 - 0.125.
    if (outcome.kind === "recorded") {
      expect(outcome.results["Corrected titre mL"]).toBeCloseTo(7.25 / 3 - 0.125, 12);
    }
    const at = (heading: string) => host.book.sheets[0]?.cells[`3,${ourHeadings.indexOf(heading)}`];
    expect([at("Lot")?.value, at("Titre 6 mL")?.value, at("Note")?.formula]).toEqual([
      "a remark",
      9,
      "=1+1",
    ]);
    expect(at("FFA %")?.formula).toBe(ourFormula("FFA %"));
    expect(host.book.tables[0]?.block.rows).toBe(4);
  });

  it("are not reached over where another table stands", async () => {
    const host = open({ headings: ourHeadings, rows, below });
    host.change(({ tables }) => {
      tables.push({
        name: "Drums",
        block: { sheet: "Lab log", row: 3, column: 1, rows: 3, columns: 2 },
        isFiltered: false,
        hasTotals: false,
      });
    });
    expect((await refusal(host)).sentence).toContain("There is no free row in the table");
  });
});

describe("a row of the table that is not wholly empty", () => {
  it("is free when only another's column holds something, which stays", async () => {
    const host = open({
      headings: ["Lot", "Titre 1 mL", "Theirs"],
      rows: [
        ["X", 1, null],
        [null, null, "sum"],
      ],
    });
    const plan = await planned(host, fryerLot);
    expect(plan.remarks).toContainEqual({
      sentence: `'Lab log'!C4 holds "sum": it stays, and becomes part of the row.`,
    });
    await recorded(host, fryerLot);
    expect(host.book.sheets[0]?.cells["3,2"]?.value).toBe("sum");
  });

  it("is not free when somebody typed a result into it", async () => {
    const typed = rowUnder(ourHeadings, { ...withFormulas({}), "FFA %": 1.2 });
    const host = open({
      headings: ourHeadings,
      rows: [rowUnder(ourHeadings, withFormulas(earlier)), typed],
    });
    expect(await refusal(host)).toMatchObject({ hasNextFree: true });
    expect((await planned(host, fryerLot)).summary).toContain("A new row 5 ");
  });

  it("gets its formulas again where an error was left behind as if it had been typed", async () => {
    const left = ourHeadings.map((heading) => (ourFormula(heading) === "" ? null : "#N/A"));
    const host = withErrors(
      open({ headings: ourHeadings, rows: [left, rowUnder(ourHeadings, withFormulas({}))] }),
    );
    const plan = await planned(host, fryerLot);
    expect(plan.summary).toContain("The empty row 3 ");
    expect(plan.mustConfirm).toEqual([]);
    const outcome = await recorded(host, fryerLot);
    if (outcome.kind !== "recorded") throw new Error("not recorded");
    expect(outcome.results["FFA %"]).toBeTypeOf("number");
  });
});

describe("a table that takes no row", () => {
  const rows = [rowUnder(ourHeadings, withFormulas(earlier))];

  it("is one on a protected sheet", async () => {
    const host = open({ headings: ourHeadings, rows });
    host.change(({ sheets }) => sheets.forEach((sheet) => (sheet.isProtected = true)));
    expect(await refusal(host)).toEqual({
      kind: "refused",
      sentence:
        "The sheet Lab log is protected. Nothing was written and what you typed is kept: take its protection off, then try again.",
    });
  });

  it("is one of a partner copy: its formulas have their steps where only sharing writes", async () => {
    const copied =
      "=IF(Workings!B6=ROW(),Workings!G6,INDEX(Workings!G$6:G$14,MATCH(ROW(),Workings!B$6:B$14,0)))";
    const rows = (formula: string) => [
      rowUnder(ourHeadings, { ...earlier, "Corrected titre mL": formula }),
    ];
    const found = await refusal(open({ headings: ourHeadings, rows: rows(copied) }));
    expect(found.sentence).toBe(
      "This workbook is a partner copy: the table Titrations cannot work out a new row. Record the titration in your own workbook, then share it again.",
    );
    const numbered = copied.replaceAll("Workings!", "'Workings 2'!");
    expect((await refusal(open({ headings: ourHeadings, rows: rows(numbered) }))).kind).toBe(
      "refused",
    );
    const own = open({ headings: ourHeadings, rows: rows("=Workings!B6+1") });
    const text = open({ headings: ourHeadings, rows: rows('="Workings!B6 "&ROW()') });
    expect((await planTitration(text, fryerLot)).kind).toBe("plan");
    expect((await planTitration(own, fryerLot)).kind).toBe("plan");
  });

  it("is one that is filtered", async () => {
    const host = open({ headings: ourHeadings, rows });
    host.change(({ tables }) => tables.forEach((table) => (table.isFiltered = true)));
    expect(await refusal(host)).toMatchObject({
      sentence: expect.stringContaining("The table Titrations is filtered") as string,
    });
  });

  it("is one with a row of totals right below, unless it has an empty row left", async () => {
    const host = open({ headings: ourHeadings, rows });
    host.change(({ tables }) => tables.forEach((table) => (table.hasTotals = true)));
    expect((await refusal(host)).sentence).toContain("A row of totals stands right below");
    const roomy = open({ headings: ourHeadings, rows: [...rows, ourHeadings.map(() => null)] });
    roomy.change(({ tables }) => tables.forEach((table) => (table.hasTotals = true)));
    expect(await planned(roomy, fryerLot)).toMatchObject({ kind: "plan" });
  });

  it("is one in a workbook that takes no changes", async () => {
    const host = open({ headings: ourHeadings, rows });
    host.change((book) => (book.isReadOnly = true));
    expect(await refusal(host)).toMatchObject({
      sentence: expect.stringContaining("This workbook takes no changes") as string,
    });
  });

  it("is one that only has our name", async () => {
    const host = open({ headings: ["Ferry", "Fuel"], rows: [["Heron", 40]] });
    expect(await refusal(host)).toEqual({
      kind: "refused",
      sentence:
        "The table Titrations on the sheet Lab log lacks the headings Lot, Titre 1 mL, so it is not a logbook of titrations: rename it, then record again.",
    });
  });
});

import { describe, expect, it } from "vitest";
import { offers } from "../../../src/adopt/added-columns/columns-to-add";
import { planColumns } from "../../../src/workbook/planning/logbook/add-columns";
import { carryOut } from "../../../src/workbook/planning/carry-out";
import type { Plan } from "../../../src/workbook/planning/plan";
import { mendable, planMending } from "../../../src/workbook/planning/logbook/mend";
import { planReport } from "../../../src/workbook/planning/logbook/recheck-report";
import {
  planRemembering,
  readRemembered,
} from "../../../src/workbook/planning/logbook/remember-columns";
import { mappingFrom, withColumn, withConstant } from "../../../src/adopt/recognising/mapping";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { rememberedMapping } from "../../../src/adopt/recognising/remembered";
import { cellsFromAnswer } from "../../../src/adopt/recognising/sheet-cells";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import type { MemoryHost } from "../../host/memory";
import type { Cells } from "../../../src/sheet/port";
import { openMemory } from "../../host/open-memory";

const headings = [
  "Date",
  "Drum",
  "T1 ml",
  "T2 ml",
  "Blank",
  "Sample g",
  "KOH N",
  "Oil (l)",
  "KOH total (g)",
];
const rows = [
  [46_000, "NQ-1", 5.2, 5.3, 0.25, 10, 0.1, 120, 1276],
  [46_003, "NQ-2", 4.1, 4.2, 0.25, 10, 0.1, 100, 1021],
  [46_006, "NQ-3", 3.1, 3.2, 0.25, 10, 0.1, 100, 970],
];

function open(beside?: string): MemoryHost {
  const cells = [headings, ...rows].map((row) => row.map((value) => ({ value })));
  if (beside !== undefined) cells[2]?.push({ value: "" }, { value: beside });
  return openMemory({
    name: "Log",
    sheets: [{ name: "Oil book", rows: cells, columnWidths: [], tables: [], frozenRows: 0 }],
  });
}

async function read(host: MemoryHost) {
  const answer = (await host.read([
    { ask: "cells", block: { sheet: "Oil book", row: 0, column: 0, rows: 4, columns: 9 } },
  ])) as Cells[];
  const cells = cellsFromAnswer(answer[0] as Cells);
  const [guess] = recogniseSheet(cells);
  if (!guess) throw new Error("no logbook");
  const mapping = withConstant(
    withConstant(withConstant(mappingFrom(guess), "base", "KOH"), "assay", "90"),
    "baseCharge",
    "0.765",
    "%",
    "pure",
  );
  return { guess, cells, mapping };
}

const isPlan = (found: { kind: string }): found is Plan => found.kind === "plan";

describe("columns added to a logbook", () => {
  it("go to its right end, one formula for all rows, and one undo takes them back", async () => {
    const host = open();
    const before = host.book;
    const { mapping, cells } = await read(host);
    const chosen = offers(mapping, cells, "functions").filter(
      ({ id }) => id === "correctedTitre" || id === "catalyst",
    );
    const plan = await planColumns(host, mapping, chosen);
    if (!isPlan(plan)) throw new Error(plan.sentence);
    expect(host.book).toEqual(before);
    expect(plan.block).toEqual({ sheet: "Oil book", row: 0, column: 9, rows: 4, columns: 2 });
    expect(plan.mustConfirm).toEqual([]);
    const confirmed = { fingerprint: plan.fingerprint, agreed: [] };
    const outcome = await carryOut(
      host,
      "Add columns",
      () => planColumns(host, mapping, chosen),
      confirmed,
    );
    expect(outcome.kind).toBe("recorded");
    const sheet = host.book.sheets[0];
    expect(sheet?.cells["0,9"]?.value).toBe("Corrected titre, mL");
    expect(sheet?.cells["3,9"]?.formula).toBe('=IF(COUNT(C4:D4)=0,"",TITRE.CORRECTED(C4:D4,E4))');
    // Everything that was there is there still.
    for (const [place, cell] of Object.entries(before.sheets[0]?.cells ?? {}))
      expect(sheet?.cells[place]).toEqual(cell);
    host.undo();
    expect(host.book).toEqual(before);
  });

  it("are refused when a cell is in the way, which is named", async () => {
    const host = open("do not touch");
    const { mapping, cells } = await read(host);
    const chosen = offers(mapping, cells, "functions").filter(({ id }) =>
      ["correctedTitre", "acidValue"].includes(id),
    );
    const plan = await planColumns(host, mapping, chosen);
    expect(plan).toMatchObject({ kind: "refused" });
    expect("sentence" in plan ? plan.sentence : "").toContain("'Oil book'!K3");
  });

  it("say what they lack instead of a formula that cannot work", async () => {
    const { mapping, cells } = await read(open());
    const without = withConstant(mapping, "assay", "");
    expect(offers(without, cells, "functions").find(({ id }) => id === "catalyst")).toMatchObject({
      formula: undefined,
      lacks: "the assay of the lye",
    });
    expect(
      offers(mapping, cells, "functions").find(({ id }) => id === "ffaUncertainty")?.lacks,
    ).toContain("smallest differences");
    expect(
      offers(mapping, cells, "plain").find(({ id }) => id === "verdict")?.formula,
    ).toBeUndefined();
  });

  it("make the spreadsheet's own table grow, when the logbook is one", async () => {
    const host = open();
    host.change((book) => {
      book.tables.push({
        name: "Oil",
        block: { sheet: "Oil book", row: 0, column: 0, rows: 4, columns: 9 },
        isFiltered: false,
        hasTotals: false,
      });
    });
    const { mapping, cells } = await read(host);
    const chosen = offers(mapping, cells, "functions").filter(({ id }) => id === "ffa");
    const plan = await planColumns(host, mapping, chosen);
    if (!isPlan(plan)) throw new Error(plan.sentence);
    expect(plan.steps[0]).toEqual({
      do: "grow-table",
      name: "Oil",
      block: { sheet: "Oil book", row: 0, column: 0, rows: 4, columns: 10 },
    });
    const outcome = await carryOut(host, "Add", () => planColumns(host, mapping, chosen), {
      fingerprint: plan.fingerprint,
      agreed: [],
    });
    expect(outcome.kind).toBe("recorded");
  });
});

describe("columns remembered on a sheet", () => {
  it("are found again as they were agreed to, and changed only when the change is confirmed", async () => {
    const host = open();
    const { guess, mapping } = await read(host);
    const plan = await planRemembering(host, mapping);
    if (!isPlan(plan)) throw new Error(plan.sentence);
    await carryOut(host, "Remember", () => planRemembering(host, mapping), {
      fingerprint: plan.fingerprint,
      agreed: [],
    });
    const known = await readRemembered(host);
    if (!known || "sentence" in known) throw new Error("not remembered");
    expect(rememberedMapping(guess, known.values.slice(1))).toEqual(mapping);
    const changed = withColumn(mapping, 1, "batch");
    const second = await planRemembering(host, changed);
    if (!isPlan(second)) throw new Error(second.sentence);
    expect(second.mustConfirm).toHaveLength(1);
    const refused = await carryOut(host, "Remember", () => planRemembering(host, changed), {
      fingerprint: second.fingerprint,
      agreed: [],
    });
    expect(refused.kind).toBe("to-confirm");
    await carryOut(host, "Remember", () => planRemembering(host, changed), {
      fingerprint: second.fingerprint,
      agreed: second.mustConfirm,
    });
    const again = await readRemembered(host);
    if (!again || "sentence" in again) throw new Error("not remembered");
    expect(rememberedMapping(guess, again.values.slice(1))).toEqual(changed);
  });
});

describe("the report of a re-check", () => {
  it("is a new sheet with a live line for each finding", async () => {
    const host = open();
    const { mapping, cells } = await read(host);
    const logbooks = [{ mapping, cells }];
    const report = recheckAtOnce(logbooks);
    // By hand: 109.8 kg, acid value 56.1 x 0.1 x 5 / 10 = 2.805, so 308.0 g and 840.0 g of KOH, 1275.6 g of 90 %;
    // 91.5 kg with 3.9 mL: 200.2 + 700.0 = 900.2, 1000.2 g; with 2.9 mL: 148.9 + 700 = 848.9, 943.2 g.
    expect(report.findings.map(({ address, should }) => [address, should])).toEqual([
      ["I3", "1000"],
      ["I4", "943"],
    ]);
    const plan = await planReport(host, report, logbooks);
    if (!isPlan(plan)) throw new Error(plan.sentence);
    const outcome = await carryOut(host, "Report", () => planReport(host, report, logbooks), {
      fingerprint: plan.fingerprint,
      agreed: [],
    });
    expect(outcome.kind).toBe("recorded");
    const sheet = host.book.sheets.find(({ name }) => name === "Re-check report");
    expect(sheet?.cells["4,5"]?.formula).toBe("='Oil book'!I3");
    expect(sheet?.cells["4,6"]?.formula).toContain(
      "TITRE.CATALYST(TITRE.OILMASS('Oil book'!H3,\"l\")",
    );
    expect(sheet?.cells["4,7"]?.formula).toBe("=F5-G5");
  });
});

describe("a logbook put right", () => {
  it("has the right figures in a new column, the old ones in its other rows, and nothing else changed; one undo takes it back", async () => {
    const host = open();
    const before = host.book;
    const { mapping, cells } = await read(host);
    const logbook = { mapping, cells };
    const { findings } = recheckAtOnce([logbook]);
    const plan = () => planMending(host, logbook, findings);
    const planned = await plan();
    if (!isPlan(planned)) throw new Error(planned.sentence);
    expect(host.book).toEqual(before);
    const agreed = { fingerprint: planned.fingerprint, agreed: [] };
    expect((await carryOut(host, "Mend", plan, agreed)).kind).toBe("recorded");
    const sheet = host.book.sheets[0];
    expect(sheet?.cells["0,9"]?.value).toBe("KOH total (g), put right");
    expect(sheet?.cells["1,9"]?.formula).toBe("=I2");
    // by hand 1000.2 g and 943.2 g, from the row's own cells
    for (const row of [2, 3])
      expect(sheet?.cells[`${String(row)},9`]?.formula).toContain(
        `TITRE.CATALYST(TITRE.OILMASS(H${String(row + 1)},"l")`,
      );
    const old = Object.entries(sheet?.cells ?? {}).filter(([place]) => !place.endsWith(",9"));
    expect(Object.fromEntries(old)).toEqual(before.sheets[0]?.cells);
    host.undo();
    expect(host.book).toEqual(before);
  });

  it("leaves what was weighed, and what may be a slip of a reading, to its owner", async () => {
    const { mapping, cells } = await read(open());
    const logbook = { mapping, cells };
    const [first] = recheckAtOnce([logbook]).findings;
    if (!first) throw new Error("nothing was found");
    expect(mendable([first], logbook)).toEqual([first]);
    expect(mendable([{ ...first, role: "weighed" }], logbook)).toEqual([]);
    expect(mendable([{ ...first, oddInput: "The sample may be the slip." }], logbook)).toEqual([]);
  });
});

/** A table that an earlier Titrebook made: it has no columns for burette, record and worth. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { isFault } from "../../../src/sheet/port";
import { readTitrations } from "../../../src/workbook/planning/read-titrations";
import { readLots } from "../../../src/workbook/planning/read-lots";
import { planBatch } from "../../../src/workbook/planning/record/record-batch";
import { planTitration } from "../../../src/workbook/planning/record/record-titration";
import { recorded } from "../../host/contract-recording";
import { openMemory } from "../../host/open-memory";
import { slipwayBatch } from "../record/batch-records";
import { fryerLot } from "../record/records";
import { logbookOf, ourFormula, ourHeadings, rowUnder } from "./logbooks";

const later = ["Sample by", "Burette ± %", "Usual scatter mL", "Usual freedom", "Worth"];
const headings = ourHeadings.filter((heading) => !later.includes(heading));

/** As they were written then. */
const bench =
  "Titrations[[#This Row],[Titre 1 mL]:[Titre 6 mL]],Titrations[[#This Row],[Blank 1 mL]:[Blank 3 mL]],Titrations[[#This Row],[Molarity mol/L]],IF(COUNT(Titrations[[#This Row],[Own mass 1 g]:[Own mass 6 g]])>0,Titrations[[#This Row],[Own mass 1 g]:[Own mass 6 g]],Titrations[[#This Row],[Mass g]])";
const earlierFormulas = {
  "± FFA %": `=TITRE.FFAUNCERTAINTY(${bench},Titrations[[#This Row],[Read to mL]],Titrations[[#This Row],[Weighed to g]],Titrations[[#This Row],[Titrant ± %]])`,
  Verdict:
    "=TITRE.VERDICT(Titrations[[#This Row],[Titre 1 mL]:[Titre 6 mL]],Titrations[[#This Row],[Read to mL]],,IF(COUNT(Titrations[[#This Row],[Own mass 1 g]:[Own mass 6 g]])>0,Titrations[[#This Row],[Own mass 1 g]:[Own mass 6 g]],Titrations[[#This Row],[Mass g]]),Titrations[[#This Row],[Blank 1 mL]:[Blank 3 mL]])",
};
const formulas = {
  ...Object.fromEntries(headings.map((heading) => [heading, ourFormula(heading)])),
  ...earlierFormulas,
};

const values = {
  ...Object.fromEntries(Object.entries(formulas).filter(([, formula]) => formula !== "")),
  Date: 46_100,
  Lot: "SW-17",
  "Molarity mol/L": 0.1,
  "Titre 1 mL": 2.4,
  "Titre 2 mL": 2.45,
  "Blank 1 mL": 0.15,
  "Mass g": 10,
  "Read to mL": 0.05,
  "Weighed to g": 0.01,
  "Titrant ± %": 0.5,
};
const earlier = () => openMemory(logbookOf({ headings, rows: [rowUnder(headings, values)] }));

describe("a table of titrations that an earlier Titrebook made", () => {
  it("takes a titration under the right headings, with the formulas that its rows have", async () => {
    const host = earlier();
    const outcome = await recorded(host, { ...fryerLot, lot: "F-208" });
    if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
    expect([outcome.differences, outcome.troubles ?? []]).toEqual([[], []]);
    const formulaUnder = (heading: string) => {
      const content = outcome.plan.cells.find((cell) => cell.heading === heading)?.content;
      return content?.kind === "formula" ? content.formula : undefined;
    };
    for (const [heading, formula] of Object.entries(earlierFormulas)) {
      expect(formulaUnder(heading)).toBe(formula);
    }
    expect(typeof outcome.results["± FFA %"]).toBe("number");
    const found = await readTitrations(host);
    if (isFault(found)) throw new Error(found.code);
    expect(found.rows.map(({ lot, titres }) => [lot, titres.map(Number)])).toEqual([
      ["SW-17", [2.4, 2.45]],
      ["F-208", [2.4, 2.45, 2.4]],
    ]);
    expect(found.hasUsual).toBe(false);
  });

  it("asks before a figure is left out that it has no column for", async () => {
    const plan = await planTitration(earlier(), { ...fryerLot, burettePercent: exact("0.5") });
    if (plan.kind !== "plan") throw new Error(plan.sentence);
    expect(plan.mustConfirm).toEqual(["column-missing"]);
    expect(plan.remarks.map(({ sentence }) => sentence)).toContain(
      "The table Titrations has no column for Burette ± %: that is not recorded.",
    );
    const plain = await planTitration(earlier(), fryerLot);
    expect(plain.kind === "plan" ? plain.mustConfirm : plain).toEqual([]);
  });

  it("still tells what its results are worth", async () => {
    const lots = await readLots(earlier());
    if (lots === undefined || isFault(lots)) throw new Error("no lots");
    expect(lots.map(({ worth }) => worth)).toEqual([
      {
        word: "Usable",
        why: ["Its ± is more than a fifth of it: titrate again before a large batch."],
      },
    ]);
  });

  it("gives a new table of batches no formula that names a column it lacks", async () => {
    const plan = await planBatch(earlier(), slipwayBatch);
    if (plan.kind !== "plan") throw new Error(plan.sentence);
    const under = (heading: string) => plan.cells.find((cell) => cell.heading === heading);
    expect(under("Acid value worth")).toBeUndefined();
    expect(under("± acid value mg KOH/g")?.content.kind).toBe("formula");
    expect(plan.remarks.map(({ sentence }) => sentence)).toEqual([
      "Acid value worth stays empty: the columns its formula needs are missing or stand in another order.",
    ]);
  });
});

/** The finished fuel over time, from cells of `Fuel` to points by batch; figures by hand. */
import { describe, expect, it } from "vitest";
import { isFault } from "../../../src/sheet/port";
import { fuelSeries } from "../../../src/workbook/over-time/fuel-series";
import { readFuels } from "../../../src/workbook/planning/record/read-fuels";
import { planOverTime } from "../../../src/workbook/planning/plan-over-time";
import { fuel } from "../../../src/workbook/tables/fuel";
import { type Entry, tableSheet } from "../../../src/workbook/tables/sheet";
import { openMemory } from "../../host/open-memory";

const acid = (titre: number): Entry => ({
  "Acid titre 1 mL": titre,
  "Acid titre 2 mL": titre,
  "Acid blank mL": 0.1,
  "Acid mass g": 20,
  "Acid mol/L": 0.1,
  "Acid read to mL": 0.05,
  "Weighed to g": 0.01,
});
const soap = (titre: number, grams: number): Entry => ({
  Base: "KOH",
  "Soap titre mL": titre,
  "Soap blank mL": "neutralised",
  "Soap mass g": grams,
  "HCl mol/L": 0.01,
});

const host = (...entries: readonly Entry[]) =>
  openMemory({ name: "a book", sheets: [tableSheet(fuel, entries)] });

async function seriesOf(...entries: readonly Entry[]) {
  const rows = await readFuels(host(...entries));
  if (isFault(rows)) throw new Error(rows.code);
  return fuelSeries(rows);
}

const rows: readonly Entry[] = [
  { Date: 46_003, Batch: 119, Washes: 3, ...acid(1.4), ...soap(0.2, 100), "Water %": 0.03 },
  { Date: 46_001, Batch: "B-118", Washes: "none", ...acid(0.9), ...soap(15, 6) },
  { Date: 46_002, Batch: "B-118", Washes: 2, ...acid(2.4), ...soap(2, 100), "Water %": 0.09 },
  { Date: 46_002, Batch: "b-118", Washes: 3, ...soap(0.4, 100) },
];

describe("the fuel, batch by batch", () => {
  it("has the last look at each batch in the order of time, unwashed fuel left out, and says what is above", async () => {
    const [acids, soaps, metals, waters] = await seriesOf(...rows);
    // 5.61 x (titre - 0.1) / 20
    expect(acids).toMatchObject({
      kind: "series",
      across: "batches",
      isOdd: true,
      sentence: "1 of 2 batches is above 0.5 mg KOH/g, the last B-118: 0.645 mg KOH/g.",
      leftOut: ["1 row of unwashed fuel is left out."],
      lines: [{ name: "At most", values: [0.5, 0.5] }],
    });
    expect(acids).toMatchObject({
      points: [
        { of: "B-118", isOut: true, said: "above" },
        { of: "119", isOut: false, said: "below" },
      ],
    });
    // mL x 0.01 x 1000 / 100 x 320.5583, of potassium 39.0983
    expect(soaps).toMatchObject({
      sentence: "The last batch, 119, has 6.4 mg/kg.",
      lines: [],
      leftOut: [
        "1 row of unwashed fuel is left out.",
        "1 row of a batch looked at again is left out.",
      ],
    });
    expect(metals).toMatchObject({
      sentence: "None of 2 batches is above 5 mg/kg.",
      points: [{ of: "b-118", said: "not above, without a ±" }, { of: "119" }],
    });
    if (metals?.kind !== "series") throw new Error("no series");
    expect(metals.points[0]?.value).toBeCloseTo(0.4 * 0.1 * 39.0983, 9);
    expect(waters).toMatchObject({
      sentence: "1 of 2 batches is above 0.05 %, the last B-118: 0.090 %.",
      isOdd: true,
    });
  });

  it("wants a second batch, and without any fuel says where one is tested", async () => {
    const [one] = await seriesOf({ Date: 46_001, Batch: "B-1", ...acid(1.4) });
    expect(one).toMatchObject({ kind: "too few", sentence: "1 more batch makes a chart." });
    const none = fuelSeries([]);
    expect(none.map(({ sentence }) => sentence)).toEqual([
      "No fuel is on record yet: test one in Fuel, and its batches are compared here.",
    ]);
    expect(await readFuels(openMemory())).toEqual([]);
  });

  it("goes onto the sheet with its batches across", async () => {
    const book = host(...rows);
    const series = (await seriesOf(...rows)).filter((each) => each.kind === "series");
    const plan = await planOverTime(book, { series, today: 46_010 });
    if (plan.kind === "refused") throw new Error(plan.sentence);
    const [chart] = plan.steps.filter((step) => step.do === "add-chart");
    expect(chart).toMatchObject({ acrossTitle: "Batch", across: { column: 1, rows: 2 } });
  });
});

/** The pane and the row of `Fuel` say the same; what they say was worked out by hand. */
import { describe, expect, it } from "vitest";
import { isExact } from "../../../src/core/exact/exact";
import { isProblem } from "../../../src/core/problem/problem";
import { type Draft, draftFrom, newDraft, reduce } from "../../../src/taskpane/fuel/draft";
import { viewOf } from "../../../src/taskpane/fuel/view-of";
import { fuel } from "../../../src/workbook/tables/fuel";
import { type Entry, tableSheet } from "../../../src/workbook/tables/sheet";
import { cells } from "../../host/contract-parts";
import { openMemory } from "../../host/open-memory";

const washed: Draft["typed"] = {
  washes: "3",
  acidMolarity: "0.1",
  acidMass: "20",
  acidBlank: "0.10",
  acidTitre1: "1.45",
  acidTitre2: "1.50",
  acidTitre3: "1.45",
  titreStep: "0.05",
  massStep: "0.01",
  soapMolarity: "0.01",
  soapMass: "100",
  soapTitre: "0.30",
  soapBlank: "0.10",
};
const unwashed: Draft["typed"] = {
  ...washed,
  soapMass: "6",
  freeBaseTitre: "0.40",
  soapTitre: "15.0",
  soapBlank: "",
};

const draftOf = (typed: Draft["typed"], isWashed: "yes" | "no", base: "KOH" | "NaOH"): Draft =>
  reduce(
    reduce(
      { ...newDraft(), typed },
      { do: "pick", picked: { washed: isWashed, base, trial: "clear" } },
    ),
    { do: "write", words: { batch: "118" } },
  );

const viewed = (draft: Draft) => viewOf(draft, ".", "2026-11-30");

/** What the calculated columns of the row show, by heading. */
async function rowOf(draft: Draft): Promise<(heading: string) => unknown> {
  const { record } = viewed(draft);
  const entry: Entry = Object.fromEntries(
    fuel.columns.flatMap(({ heading, of }) => {
      const value = of?.(record);
      if (value === undefined || value === null) return [];
      return [[heading, isExact(value) ? value.toNumber() : value]];
    }),
  );
  const host = openMemory({ name: "a book", sheets: [tableSheet(fuel, [entry])] });
  const block = { sheet: "Fuel", row: 3, column: 0, rows: 1, columns: fuel.columns.length };
  const [row = []] = (await cells(host, block)).values;
  return (heading) => row[fuel.columns.findIndex((column) => column.heading === heading)];
}

describe("a washed fuel", () => {
  const draft = draftOf(washed, "yes", "NaOH");
  const { working, wants, record } = viewed(draft);

  it("is worked out as by hand", () => {
    expect(wants).toEqual([]);
    expect(record.batch).toBe(118);
    // 56.1 × 0.1 × (1.4667 − 0.10) / 20; 0.20 mL × 0.01 × 304.44977 × 1000 / 100
    expect(working.acid?.value).toBeCloseTo(0.38335, 10);
    expect(working.acid?.verdict).toBe("below");
    expect(working.soap?.soap).toBeCloseTo(6.0889954, 6);
    // 0.20 × 0.01 × 22.98976928 × 10; ± 1.96 × 0.05 × sqrt(2/6) mL of it
    expect(working.soap?.metal.value).toBeCloseTo(0.4597954, 6);
    const doubt = 1.96 * 0.05 * Math.sqrt(2 / 6) * 0.01 * 22.98976928 * 10;
    expect(working.soap?.metal.doubt).toBeCloseTo(doubt, 9);
    expect(working.soap?.metal.verdict).toBe("below");
  });

  it("stands in its row as in the pane", async () => {
    const at = await rowOf(draft);
    expect(at("Acid value mg KOH/g")).toBe(working.acid?.value);
    expect(at("± acid value")).toBe(working.acid?.doubt);
    expect(at("Acid verdict")).toBe(working.acid?.words);
    expect(at("Soap mg/kg")).toBe(working.soap?.soap);
    expect(at("Free base mg/kg")).toBe("");
    expect(at("Metal mg/kg")).toBe(working.soap?.metal.value);
    expect(at("± metal")).toBeCloseTo(working.soap?.metal.doubt ?? NaN, 12);
    expect(at("Metal verdict")).toBe(working.soap?.metal.words);
  });
});

describe("an unwashed fuel", () => {
  const draft = draftOf(unwashed, "no", "KOH");
  const { working } = viewed(draft);

  it("is worked out as by hand, base and soap together", async () => {
    // 9.2 of the notes: 6 g, 0.40 mL: 37.40 mg/kg KOH; 15.0 mL: 8014 mg/kg soap
    expect(working.soap?.freeBase).toBeCloseTo(37.4035, 3);
    expect(working.soap?.soap).toBeCloseTo(8013.96, 2);
    // all 15.4 mL carry potassium: 15.4 × 0.01 × 39.0983 × 1000 / 6
    expect(working.soap?.metal.value).toBeCloseTo(1003.523, 2);
    const at = await rowOf(draft);
    expect(at("Washes")).toBe("none");
    expect(at("Metal mg/kg")).toBe(working.soap?.metal.value);
    expect(at("± metal")).toBeCloseTo(working.soap?.metal.doubt ?? NaN, 9);
    expect(String(at("Metal verdict"))).toMatch(/^above:/);
  });
});

describe("a fuel in pieces", () => {
  it("wants what a begun step lacks, and nothing of one that is not begun", () => {
    const some = draftOf({ acidTitre1: "1.45" }, "yes", "KOH");
    expect(viewed(some).wants.map(({ sentence }) => sentence)).toEqual([
      "Fill in Titrant strength.",
      "Fill in Fuel in each flask.",
    ]);
    const trialAlone = draftOf({}, "yes", "KOH");
    expect(viewed(trialAlone).wants).toEqual([]);
  });

  it("has a row that shows nothing of what was not titrated", async () => {
    const at = await rowOf(draftOf({}, "yes", "KOH"));
    for (const { heading, formula } of fuel.columns) if (formula) expect(at(heading)).toBe("");
  });

  it("says so where soap is below what the flask can show", () => {
    const view = viewed(draftOf({ ...washed, soapTitre: "0.10" }, "yes", "KOH"));
    expect(isProblem(view.working.soap?.soap)).toBe(true);
    expect(view.wants.map(({ sentence }) => sentence).join()).toMatch(
      /equals the blank.*soap is below what this sample can show/,
    );
  });

  it("is believed out of storage part by part", () => {
    const draft = draftOf(washed, "yes", "NaOH");
    expect(draftFrom(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
    const bad = draftFrom({
      version: 1,
      typed: { soapMass: 7, water: "1" },
      picked: { base: "x" },
    });
    expect(bad.typed).toEqual({ water: "1" });
    expect(bad.picked.base).toBe("KOH");
    expect(draftFrom(undefined)).toEqual(newDraft());
  });
});

describe("titres of a fuel that do not agree", () => {
  const odd = (acidTitre1: string, acidTitre2: string, acidTitre3: string) => {
    const { working } = viewed(
      draftOf({ ...washed, acidTitre1, acidTitre2, acidTitre3 }, "yes", "NaOH"),
    );
    return working.odd;
  };

  it("are named with the one that is odd, at three and at two", () => {
    // 4.00 - 1.10 = 2.90 mL, 58 divisions of 0.05
    expect(odd("1.0", "1.1", "4")).toContain("4.00 mL is 2.90 mL away from the two that agree");
    expect(odd("14.5", "1.45", "1.50")).toContain("14.50 mL is about ten times the others");
    expect(odd("14.5", "1.45", "")).toBe("14.50 mL is about ten times 1.45 mL: a slipped point?");
  });

  it("are left alone where they agree, or where there is but one", () => {
    expect(odd("1.45", "1.50", "1.45")).toBeUndefined();
    expect(odd("1.45", "", "")).toBeUndefined();
  });
});

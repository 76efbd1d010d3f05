import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { recordOf } from "../../../src/taskpane/titrate/record";
import {
  afterPlan,
  afterWriting,
  confirmedOf,
  isAgreed,
} from "../../../src/taskpane/planned/carrying";
import { atOdds } from "../../../src/taskpane/titrate/at-odds";
import { keepsFromRecording, stateOf } from "../../../src/taskpane/titrate/progress";
import {
  planTitration,
  recordTitration,
} from "../../../src/workbook/planning/record/record-titration";
import type { RecordOutcome } from "../../../src/workbook/planning/plan";
import { openMemory } from "../../host/open-memory";
import { after, but, draftOf, seen, type Slip, viewOfSlip, whole } from "./slip";

const recorded = (slip: Slip) => {
  const record = recordOf(viewOfSlip(slip));
  if (record === undefined) throw new Error("nothing to record");
  return record;
};

describe("the row of a titration", () => {
  it("holds what was typed, with the omitted reading in words and its place left empty", () => {
    const draft = after(draftOf(whole), { do: "omit", index: 1, reason: "bubble" });
    const record = recordOf(seen(draft));
    expect(record?.titres.map((titre) => titre?.toString() ?? null)).toEqual([
      "2.4",
      null,
      "2.45",
      null,
      null,
      null,
    ]);
    expect(record?.omitted.map(({ number, reason }) => ({ number, reason }))).toEqual([
      { number: 2, reason: "bubble" },
    ]);
    expect(record).toMatchObject({ lot: "NQ-41", strengthSetBy: "certificate", date: 46_295 });
  });

  it("says neutralised where the solvent was, even when blanks were titrated before", () => {
    expect(recorded(but({ picked: { blank: "neutralised" } })).blanks).toBe("neutralised");
  });

  it("has a mass for each titre that counts, and none beside an omitted one", () => {
    const slip = but({
      picked: { masses: "own" },
      titres: [
        ["2.4", "10.1"],
        ["2.5", "10.2"],
        ["2.45", "10.3"],
      ],
    });
    const record = recordOf(seen(after(draftOf(slip), { do: "omit", index: 0, reason: "x" })));
    expect(Array.isArray(record?.masses) && record.masses.map((each) => each?.toString())).toEqual([
      undefined,
      "10.2",
      "10.3",
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("keeps a lot that looks like a formula or a tag as it was typed", () => {
    for (const lot of ["=1+1", "<b>", "'NQ"]) expect(recorded(but({ lot })).lot).toBe(lot);
  });

  it("notes what has no column: a sample by volume, a lye of unknown assay", () => {
    const { note } = recorded(
      but({
        typed: { gramsPerLitre: "5", volume: "10", temperature: "25", samplePercent: "5" },
        picked: { way: "gramsPerLitre", assay: "same-lye", sample: "by volume" },
      }),
    );
    expect(note).toContain("10 mL at 25 °C, ± 5 %");
    expect(note).toContain("assay unknown");
  });

  it("is not written while anything it needs is missing, and that is said", () => {
    const lacking: readonly (readonly [Slip, string])[] = [
      [but({ lot: " " }), "Fill in Lot."],
      [but({ typed: { certified: "" } }), "Fill in Strength."],
      [but({ typed: { mass: "" } }), "Fill in Oil weighed."],
      [but({ blanks: [] }), "No blank yet."],
      [but({ titres: [] }), "No titre yet."],
      [but({ picked: { blank: "" } }), "Is the blank titrated, or is the solvent neutralised?"],
      [but({ checkedOn: "2026-10-01" }), "The day it was checked is in the future."],
    ];
    for (const [slip, sentence] of lacking) {
      const view = viewOfSlip(slip);
      expect(recordOf(view)).toBeUndefined();
      expect(keepsFromRecording(view.wants).map((want) => want.sentence)).toContain(sentence);
    }
  });

  it("is written without a ±, since a missing step is no reason to lose a titration", () => {
    const view = viewOfSlip(but({ typed: { titreStep: "", massStep: "" } }));
    expect(recordOf(view)).toBeDefined();
    expect(stateOf("titrant", view, view.wants)).toBe("part done");
    expect(stateOf("result", view, view.wants)).toBe("part done");
  });

  it("finds every step done when nothing is missing", () => {
    const view = viewOfSlip(whole);
    expect(view.wants).toEqual([]);
    for (const step of ["titrant", "oil", "blank", "replicates", "result"] as const) {
      expect(stateOf(step, view, view.wants)).toBe("done");
    }
    expect(stateOf("record", view, view.wants)).toBe("to do");
  });
});

async function record(slip: Slip): Promise<RecordOutcome> {
  const host = openMemory();
  const row = recorded(slip);
  const plan = await planTitration(host, row);
  if (plan.kind === "refused") throw new Error(plan.sentence);
  return recordTitration(host, row, confirmedOf(plan, plan.mustConfirm));
}

const titre = fc.integer({ min: 20, max: 400 }).map((steps) => (steps * 0.05).toFixed(2));
const mass = fc.integer({ min: 90, max: 2000 }).map((steps) => (steps * 0.01).toFixed(2));
const anySlip: fc.Arbitrary<Slip> = fc
  .record({
    readings: fc.array(fc.tuple(titre, mass), { minLength: 2, maxLength: 6 }),
    blanks: fc.array(fc.constantFrom("0.05", "0.10", "0.15"), { minLength: 1, maxLength: 3 }),
    own: fc.boolean(),
    blank: fc.constantFrom("titrated", "neutralised"),
    way: fc.constantFrom<Slip>(
      { typed: { certified: "0.0998" }, picked: { way: "certified" } },
      { typed: { gramsPerLitre: "5", assay: "90" }, picked: { way: "gramsPerLitre" } },
      { typed: { phthalateMass: "0.5105", phthalateTitre: "25.05" }, picked: { way: "phthalate" } },
    ),
    sample: fc.constantFrom("weighed", "by volume"),
  })
  .map(({ readings, blanks, own, blank, way, sample }) =>
    but({
      typed: { ...way.typed, volume: "9.7", temperature: "27", samplePercent: "4" },
      picked: { ...way.picked, blank, sample, masses: own ? "own" : "one" },
      titres: readings,
      blanks,
    }),
  );

describe("a recorded row", () => {
  it("shows by its own formulas what the pane shows, to the last digit", async () => {
    await fc.assert(
      fc.asyncProperty(anySlip, async (slip) => {
        const { acid, doubt, judgement } = viewOfSlip(slip).working;
        if (acid === undefined || isProblem(acid)) return;
        const outcome = await record(slip);
        if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
        expect(outcome.differences).toEqual([]);
        expect(outcome.results).toMatchObject({
          "Corrected titre mL": acid.correctedTitre.toNumber(),
          "Acid value mg KOH/g": acid.acidValue.toNumber(),
          "FFA %": acid.ffa.toNumber(),
          "± FFA %": doubt?.halfWidth,
          Verdict: judgement?.verdict,
        });
        expect(atOdds(outcome, acid.ffa.toNumber())).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});

describe("recording", () => {
  it("is planned, agreed to, done and told", async () => {
    const host = openMemory();
    const row = recorded(whole);
    const found = afterPlan(await planTitration(host, row));
    if (found.state !== "planned") throw new Error("no plan");
    expect(isAgreed(found.plan, [])).toBe(true);
    const done = afterWriting(await recordTitration(host, row, confirmedOf(found.plan, [])));
    expect(done).toMatchObject({ state: "written", differences: [] });
  });

  it("waits for agreement before the same titration is recorded twice", async () => {
    const host = openMemory();
    const row = recorded(whole);
    const first = await planTitration(host, row);
    if (first.kind === "refused") throw new Error(first.sentence);
    await recordTitration(host, row, confirmedOf(first, []));
    const again = await planTitration(host, row);
    if (again.kind === "refused") throw new Error(again.sentence);
    expect(isAgreed(again, [])).toBe(false);
    expect(isAgreed(again, again.mustConfirm)).toBe(true);
    const outcome = afterWriting(await recordTitration(host, row, confirmedOf(again, [])));
    expect(outcome).toMatchObject({ state: "planned" });
  });

  it("says what happened when the workbook cannot be written, and how the row differs", async () => {
    const host = openMemory();
    host.change((book) => {
      Object.assign(book, { isReadOnly: true });
    });
    const found = afterPlan(await planTitration(host, recorded(whole)));
    expect(found.state === "refused" && found.sentence.length).toBeGreaterThan(20);

    const outcome = await record(whole);
    expect(atOdds(outcome, 0.7).join(" ")).toContain(
      "The row shows 0.647303 % FFA and the pane 0.7 %",
    );
  });
});

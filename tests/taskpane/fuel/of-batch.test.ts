/** A fuel opened from a batch: what its row says is filled in, and nothing that somebody typed is lost. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fuelFrom } from "../../../src/taskpane/bench/begin-from";
import {
  type Draft,
  draftFrom,
  isUnderWay,
  newDraft,
  reduce,
} from "../../../src/taskpane/fuel/draft";
import { viewOf } from "../../../src/taskpane/fuel/view-of";
import { times } from "../../thorough";
import {
  asOnCard,
  isOther,
  measuredIn,
  named,
  ofRow,
  opened,
  withTrial,
} from "../../../src/taskpane/fuel/of-batch";
import type { RecordedBatch } from "../../../src/workbook/planning/read-batches";

const rowOf = (base: string, cells: Readonly<Record<string, unknown>>): RecordedBatch =>
  ({ base, under: (heading: string) => cells[heading] ?? "" }) as unknown as RecordedBatch;

const first = ofRow(
  rowOf("NaOH", { Washes: 3, "Litres made": 88.5, "Methanol trial": "clear" }),
  ",",
);
const second = ofRow(
  rowOf("koh", { "Litres made": 40, "Methanol trial": "oil at the bottom" }),
  ",",
);

/** Somebody's own: any fields, as they may be typed. */
const typed = fc.dictionary(
  fc.constantFrom("washes", "litres", "acidMass", "acidTitre1", "soapTitre", "dish", "water"),
  fc.constantFrom("2", "0,5", "x", "120"),
);
const drafts = fc
  .record({
    typed,
    batch: fc.constantFrom("", "B-1", " B-1 ", "B-2"),
    note: fc.constantFrom("", "dark"),
  })
  .map(({ typed: all, batch, note }): Draft => ({
    ...newDraft(),
    typed: all,
    words: { ...newDraft().words, batch, note },
  }));

describe("a fuel of a batch on record", () => {
  it("is shown as somebody would have measured it, where it was typed in gallons", () => {
    // 39 US gal
    const row = ofRow(rowOf("KOH", { "Litres made": 147.631059576 }), ".");
    expect(row.typed.litres).toBe("147.63");
  });

  it("begins with the base and the gallons of My bench, goes to the row in litres, and keeps what somebody typed", () => {
    // by hand: US gallons of 3.785411784 L, imperial ones of 4.54609 L
    const litresIn = { l: 1, us_gal: 3.785411784, uk_gal: 4.54609 } as const;
    const said = { l: "L", us_gal: "US gal", uk_gal: "imperial gal" } as const;
    const units = fc.constantFrom(...(Object.keys(litresIn) as (keyof typeof litresIn)[]));
    const made = fc.double({ min: 1, max: 5000, noNaN: true });
    const own = fc.constantFrom(undefined, "39", "40,5");
    fc.assert(
      fc.property(units, units, made, own, (unit, next, litres, typedHere) => {
        const bench = { base: "NaOH", unit: said[unit] };
        const begun = reduce(newDraft(), fuelFrom(bench, ","));
        expect(begun.picked).toMatchObject({ base: "NaOH", madeIn: unit });
        const row = rowOf("", { "Litres made": litres });
        const told = (each: typeof unit) => ofRow(row, ",", each);
        const filled = opened(begun, "B-1", told(unit));
        const mine =
          typedHere === undefined
            ? filled
            : reduce(filled, { do: "type", field: "litres", text: typedHere });
        const changed = measuredIn(mine, next, told);
        const { record } = viewOf(changed, ",", "2026-11-30");
        const wanted =
          typedHere === undefined ? litres : Number(typedHere.replace(",", ".")) * litresIn[next];
        expect((record.litres?.toNumber() ?? 0) / wanted).toBeCloseTo(1, 4);
        expect(newDraft({ ...changed, isRecorded: true }).picked).toMatchObject({
          base: "NaOH",
          madeIn: next,
        });
      }),
      { numRuns: times(60) },
    );
  });

  it("takes base, washes, litres and the trial from its row, in the person's marks", () => {
    const draft = opened(undefined, "B-1", first);
    expect(draft.words.batch).toBe("B-1");
    expect(draft.typed).toEqual({ washes: "3", litres: "88,5" });
    expect(draft.picked).toMatchObject({ base: "NaOH", washed: "yes", trial: "clear" });
  });

  it("follows when another row is chosen instead, and says nothing that this one does not", () => {
    const draft = named(opened(undefined, "B-1", first), "B-2", second, first);
    expect(draft.typed).toEqual({ litres: "40" });
    expect(draft.picked).toMatchObject({ base: "KOH", washed: "", trial: "oil at the bottom" });
  });

  it("has the trial from the card, recorded there or not, and says so until another answer is picked", () => {
    const fromRow = opened(undefined, "B-2", second);
    // oil at the bottom is what Fuel calls drops that fall
    expect(fromRow.picked.trial).toBe("oil at the bottom");
    expect(fromRow.words.trialFrom).toMatch(/^From the bench card of .*: oil at the bottom\.$/);
    const asPicked = opened(undefined, "B-2", withTrial(second, "clear", "B-2"));
    expect(asPicked.picked.trial).toBe("clear");
    expect(asPicked.words.trialFrom).toBe("From the bench card of B-2: clear.");
    const own = reduce(asPicked, { do: "pick", picked: { trial: "cloudy" } });
    expect(own.words.trialFrom).toBe("");
    // what somebody picked here stays, and nothing is said to have come from elsewhere
    const again = opened(own, "B-2", withTrial(second, "clear", "B-2"));
    expect([again.picked.trial, again.words.trialFrom]).toEqual(["cloudy", ""]);
  });

  it("keeps every figure typed for it when it is opened again, or asks first where it is another's", () => {
    fc.assert(
      fc.property(drafts, (draft) => {
        if (isOther(draft, "B-1")) {
          expect([draft.words.batch.trim(), isUnderWay(draft)]).toEqual(["B-2", true]);
          return;
        }
        expect(opened(draft, "B-1", first).typed).toMatchObject(draft.typed);
        expect(opened(draft, "B-1", first).words.note).toBe(draft.words.note);
      }),
      { numRuns: 60 },
    );
  });

  it("begins anew where the one before stands in the workbook, with its burettes and titrants", () => {
    const before: Draft = {
      ...newDraft(),
      typed: { soapMolarity: "0.0101", titreStep: "0.05", soapTitre: "1.2" },
      isRecorded: true,
    };
    expect(opened(before, "B-2", second).typed).toEqual({
      soapMolarity: "0.0101",
      titreStep: "0.05",
      litres: "40",
    });
  });

  it("has no empty field when it comes out of storage or from a row", () => {
    fc.assert(
      fc.property(drafts, (draft) => {
        const found = named(draft, "B-1", second, first);
        expect(draftFrom(JSON.parse(JSON.stringify(found)))).toEqual(found);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a fuel opened from a card in gallons", () => {
  it("is measured in what the card speaks in", () => {
    expect(asOnCard(newDraft(), "B-1", "us_gal").picked.madeIn).toBe("us_gal");
    expect(asOnCard(newDraft(), "B-1", undefined).picked.madeIn).toBe("l");
  });

  it("keeps the unit of a figure that somebody typed for the same batch, and not that of another's", () => {
    const here: Draft = {
      ...newDraft(),
      typed: { litres: "90", acidMass: "20" },
      words: { ...newDraft().words, batch: "B-1" },
    };
    expect(asOnCard(here, "B-1", "us_gal")).toEqual(here);
    expect(asOnCard(here, "B-2", "us_gal").picked.madeIn).toBe("us_gal");
  });
});

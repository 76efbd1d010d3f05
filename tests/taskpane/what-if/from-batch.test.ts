/** What if begun from the batch in hand: it asks about what goes into the vessel. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reduce } from "../../../src/taskpane/batch/reducer";
import { newDraft as newBatch } from "../../../src/taskpane/batch/draft";
import { whatIfFrom } from "../../../src/taskpane/bench/begin-from";
import { reduce as reduceTable } from "../../../src/taskpane/what-if/reducer";
import { newDraft } from "../../../src/taskpane/what-if/draft";
import { fromBatch } from "../../../src/taskpane/what-if/from-batch";
import { mixInDoubt } from "../../../src/taskpane/what-if/mix-in-doubt";
import { viewOf } from "../../../src/taskpane/what-if/view-of";
import { times } from "../../thorough";
import { but, draftOf, seen as batchSeen, type Slate } from "../batch/slate";

const columns = (slate: Slate, before = newDraft()) => {
  const { recorded } = batchSeen(slate);
  const draft = fromBatch(before, draftOf(slate), recorded, ".");
  return { draft, question: viewOf(draft, ".", recorded).working.question };
};

describe("a table over sizes begun from a batch", () => {
  // lots A and H have 5 mg KOH/g, B has 1, C has 20; the first one's kind of oil counts for all
  const acidOf = { A: 5, B: 1, H: 5, I: 5, F: 5 } as const;
  type Mark = keyof typeof acidOf;

  it("has the acid value of the mix that the batch weighs out for, its amount and its oil", () => {
    const marks = fc.shuffledSubarray(Object.keys(acidOf) as Mark[], {
      minLength: 1,
      maxLength: 4,
    });
    const shares = fc.array(fc.integer({ min: 10, max: 300 }), { minLength: 3, maxLength: 3 });
    const amount = fc.integer({ min: 20, max: 900 });
    fc.assert(
      fc.property(marks, shares, amount, (lots, tenths, litres) => {
        const typed = lots.slice(0, -1).map((_, at) => (tenths[at] ?? 0) / 10);
        const parts = [...typed, 100 - typed.reduce((sum, each) => sum + each, 0)];
        const slate = but({
          lots,
          shares: Object.fromEntries(typed.map((share, at) => [lots[at] ?? "", String(share)])),
          typed: { amount: String(litres), temperature: "50" },
        });
        const mixed = lots.reduce(
          (sum, lot, at) => sum + (acidOf[lot] * (parts[at] ?? 0)) / 100,
          0,
        );
        const { question } = columns(slate);
        expect(question?.columns.map(({ acid }) => acid.value.toNumber())).toEqual([
          expect.closeTo(mixed, 4),
        ]);
        expect(question?.sizes.map(Number)).toEqual([litres / 2, litres, litres * 2]);
        expect(question?.oil).toBe(batchSeen(slate).working.oil);
      }),
      { numRuns: times(40) },
    );
  });

  it("follows a single lot by reference, and drops the mix of the batch before", () => {
    const mix = columns(but({ lots: ["A", "B"], shares: { A: "50" } })).draft;
    const { question } = columns(but({ lots: ["B"] }), mix);
    expect(question?.columns.map(({ acid }) => acid.lot)).toEqual(["B"]);
  });

  it("has the acid of a lot whose titrant was taken as pure as the batch has it", () => {
    // by hand: 5 mg KOH/g taken as pure, with lye of 90 % in fact: 4.5
    const { question } = columns(but({ lots: ["D"], picked: { titrantLye: "same" } }));
    expect(question?.columns.map(({ acid }) => acid.value.toNumber())).toEqual([4.5]);
  });

  it("shows no dose of a mix that Batch shows none of, since a lot is not worth one yet", () => {
    expect(columns(but({ lots: ["A", "K"], shares: { A: "50" } })).question).toBeUndefined();
  });

  it("says of a mix that is used all the same why a lot of it is not worth a dose yet", () => {
    const slate = but({ lots: ["A", "K"], shares: { A: "50" } });
    const { recorded } = batchSeen(slate);
    const held = draftOf(slate);
    const why = "lot K: The two lie 0.50 mL apart.";
    const used = reduce(held, { do: "use-all-the-same", why });
    const draft = fromBatch(newDraft(), used, recorded, ".");
    const mix = mixInDoubt(used, recorded, ".");
    const { question } = viewOf(draft, ".", recorded, mix).working;
    expect(question?.columns.map(({ acid }) => acid.usedAllTheSame)).toEqual([why]);
    const good = draftOf(but({ lots: ["A", "B"], shares: { A: "50" } }));
    expect(mixInDoubt(good, recorded, ".")).toBeUndefined();
  });

  it("keeps the base and the gallons of My bench where no batch is begun", () => {
    const { recorded } = batchSeen(but({}));
    const bench = whatIfFrom({ base: "NaOH", assayNaOH: "98", unit: "US gal" }, ".");
    const draft = fromBatch(reduceTable(newDraft(), bench), newBatch(), recorded, ".");
    expect(draft.picked).toMatchObject({ base: "NaOH", unit: "us_gal" });
  });
});

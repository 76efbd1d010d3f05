import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { as } from "../../../src/core/quantity/quantity";
import { doseDoubt } from "../../../src/taskpane/batch/amount-text";
import { allTheSame, isHeldBack, lotWorths } from "../../../src/taskpane/batch/acid-worth";
import { batchOf, recordOf } from "../../../src/taskpane/batch/record";
import { draftFrom } from "../../../src/taskpane/batch/stored";
import { viewOf } from "../../../src/taskpane/batch/view-of";
import { stateOf } from "../../../src/taskpane/batch/wants";
import { after, but, draftOf, seen } from "./slate";

const today = "2026-09-30";
const apart = but({ lots: ["K"] });
const why = "lot K: The two lie 0.50 mL apart.";

const { recorded } = seen(apart);
const used = after(draftOf(apart), { do: "use-all-the-same", why });
const usedView = viewOf(used, ".", recorded);

describe("the interval of a dose", () => {
  it("never falls below the lye for the reaction: no oil has less than no acid", () => {
    // by hand: of 900 g as weighed 700/810 are for the reaction
    const dose = {
      catalyst: as("g", exact(900)),
      pureForAcid: as("g", exact(110)),
      pureForReaction: as("g", exact(700)),
    };
    expect(doseDoubt(dose, exact(15), ".")).toBe("900.0 g ± 15 g from the titration.");
    expect(doseDoubt(dose, exact("0.34"), ",")).toBe("900,0 g ± 0,3 g from the titration.");
    expect(doseDoubt(dose, exact(400), ".")).toBe("From 777.8 to 1300.0 g, by the titration.");
  });
});

describe("a dose from readings that are apart", () => {
  it("is held back: no weigh-out, no row", () => {
    const view = seen(apart);
    expect(isHeldBack(view)).toBe(true);
    expect(batchOf(view, today)).toBeUndefined();
    expect(stateOf("weigh-out", view, view.wants)).toBe("to do");
  });

  it("is given once somebody uses it all the same, and the row's note says so", () => {
    expect(isHeldBack(usedView)).toBe(false);
    expect(stateOf("weigh-out", usedView, usedView.wants)).toBe("done");
    expect(recordOf(usedView, today)?.note).toBe(`Used all the same: ${why}`);
  });

  it("keeps the note that was written", () => {
    const noted = after(used, { do: "write", words: { note: "Trial first." } });
    expect(recordOf(viewOf(noted, ".", recorded), today)?.note).toBe(
      `Trial first. Used all the same: ${why}`,
    );
  });

  it("is asked about again when the reason is another one", () => {
    const other = recorded.map((lot) =>
      lot.lot === "K"
        ? { ...lot, worth: { word: "Not yet", why: ["3.90 mL is far."] } as const }
        : lot,
    );
    expect(isHeldBack(viewOf(used, ".", other))).toBe(true);
  });

  it("stays used when the pane is opened again", () => {
    expect(draftFrom(JSON.parse(JSON.stringify(used)) as unknown).usedAllTheSame).toBe(why);
  });

  it("is no matter where the titration is good, or nothing is known of it", () => {
    const good = seen(but({ lots: ["A"] }));
    expect([isHeldBack(good), allTheSame(good)]).toEqual([false, ""]);
    expect(lotWorths(good)).toEqual([{ words: "Lot A: Good.", isNotYet: false }]);
    expect(recordOf(good, today)?.note).toBe("");
  });

  it("is told of each lot of a mix", () => {
    const mixed = after(draftOf(but({ lots: ["A", "K"], shares: { A: "60" } })), {
      do: "use-all-the-same",
      why,
    });
    const view = viewOf(mixed, ".", recorded);
    expect(lotWorths(view)).toEqual([
      { words: "Lot A: Good.", isNotYet: false },
      { words: "Lot K: Not yet: The two lie 0.50 mL apart.", isNotYet: true },
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { fromStore, leftOut } from "../../../src/taskpane/batch/in-store";
import type { LotInStore } from "../../../src/workbook/planning/read-store";
import { after, draftOf, seen, sentences, type Slate, whole } from "./slate";
import { viewOf } from "../../../src/taskpane/batch/view-of";

const stored = (lot: string, litresLeft: number | undefined, collected?: number): LotInStore => ({
  lot,
  litresLeft,
  collected,
});

/** A has 5 mg KOH/g, B 1, C 20; all of an oil not named. */
const store = [stored("a", 100, 3), stored("B", 60, 2), stored("C", 40, 1)];
const asks = (typed: Slate["typed"], picked: Slate["picked"] = {}): Slate => ({
  ...whole,
  typed: { ...whole.typed, ...typed },
  picked: { ...whole.picked, ...picked },
});

describe("a mix chosen from what is in store", () => {
  it("uses up the lot with the least acid first, and says what is left in litres", () => {
    const view = seen(asks({ amount: "100", mostAcid: "4" }, { mostAcidIn: "acid value" }));
    // by hand: 60 L of B and 40 L of A: (60 + 5 x 40)/100 = 2.6 mg KOH/g
    expect(fromStore(view, store)).toMatchObject({
      kind: "mix",
      chosen: [
        { lot: "B", share: "60" },
        { lot: "A", share: "" },
      ],
    });
    const found = fromStore(view, store);
    if (found?.kind !== "mix") throw new Error("no mix");
    expect(found.acidValue.toNumber()).toBeCloseTo(2.6, 9);
    expect(
      found.lines.map(({ lot, taken, after: rest }) => [lot, taken.toNumber(), rest.toNumber()]),
    ).toEqual([
      ["B", 60, 0],
      ["A", 40, 60],
    ]);
  });

  it("uses the oldest as far as the acid allows, in % FFA and in US gallons too", () => {
    const picked = { mixRule: "oldest first", unit: "us_gal" } as const;
    const view = seen(asks({ amount: "20", mostAcid: "2.6" }, picked));
    const found = fromStore(view, store);
    if (found?.kind !== "mix") throw new Error("no mix");
    // by hand: 2.6 % FFA by the factor 28.2 is 5.1723 mg KOH/g. 20 US gal are 75.708 L. With all 60 L of B and
    // 15.708 of C: 374.16 of 75.708 x 5.1723 = 391.59, so C alone beside B, and more of it: 20 x + 75.708 - x
    // = 391.59, x = 16.625 L or 4.392 US gal
    expect(found.lines.map(({ lot, taken }) => [lot, Number(taken.toFixed(2))])).toEqual([
      ["C", 4.39],
      ["B", 15.61],
    ]);
    expect(Number(found.ffa.toFixed(2))).toBe(2.6);
  });

  it("says the nearest where none is so good, and how much there is where it is too little", () => {
    const sour = fromStore(seen(asks({ mostAcid: "0.5" })), store);
    expect(sour?.kind === "too sour" && sour.acidValue.toFixed(2)).toBe("2.60");
    const little = fromStore(seen(asks({ amount: "250", mostAcid: "9" })), store);
    expect(little?.kind === "too little" && little.left.toFixed(1)).toBe("200.0");
  });

  it("waits for the amount and the acid", () => {
    expect(fromStore(seen(whole), store)).toBeUndefined();
    expect(fromStore(seen(asks({ amount: "", mostAcid: "1" })), store)).toBeUndefined();
  });

  it("leaves out what nobody can count with, and says why", () => {
    const others = [
      ...store,
      stored("Z", 50),
      stored("G", 50),
      stored("K", 50),
      stored("F", undefined),
      stored("E", 0),
      stored("H", 50),
      stored("D", 0.5),
      stored("41", 0.4),
    ];
    expect(leftOut(seen(whole), others)).toEqual([
      "Z is not titrated",
      "G has no acid value",
      "K is not good enough yet",
      "F has no litres in Lots",
      "H is solid, and cannot be counted in litres",
      "of D only dregs are left",
      // the table shows 0 L of it
      "41: empty",
    ]);
  });

  it("fills the list of lots, which then is a batch of that acid", () => {
    const view = seen(asks({ mostAcid: "4" }, { mostAcidIn: "acid value" }));
    const found = fromStore(view, store);
    if (found?.kind !== "mix") throw new Error("no mix");
    const used = viewOf(
      after(draftOf(whole), { do: "mix", lots: found.chosen }),
      ".",
      view.recorded,
    );
    expect(sentences(used)).toEqual([]);
    expect(used.working.mix).toMatchObject({ lots: [{ recorded: { lot: "B" } }, {}] });
    expect(used.working.batch).toBeDefined();
  });

  it("counts lots over a titrant of this lye, taken as pure, with the acid that the mix will have", () => {
    const d = [stored("D", 500)];
    const typed = { mostAcid: "4.5" };
    const other = { mostAcidIn: "acid value" } as const;
    // lye of 90 %: 5 is 4.5
    expect(fromStore(seen(asks(typed, other)), d)?.kind).toBe("too sour");
    expect(fromStore(seen(asks(typed, { ...other, titrantLye: "same" })), d)?.kind).toBe("mix");
  });
});

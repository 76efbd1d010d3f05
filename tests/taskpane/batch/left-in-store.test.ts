import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isUsedUp, lacksInStore } from "../../../src/taskpane/batch/left-in-store";
import { viewOf } from "../../../src/taskpane/batch/view-of";
import { after, but, draftOf, seen, type Slate } from "./slate";

const store = (left: Readonly<Record<string, number | undefined>>) =>
  Object.entries(left).map(([lot, litresLeft]) => ({ lot, litresLeft, collected: undefined }));
const lacks = (slate: Slate, left: Readonly<Record<string, number | undefined>>) =>
  lacksInStore(seen(slate), store(left));

describe("a batch of more oil than its lot has left", () => {
  it("is told so in the unit that was typed, and never stopped", () => {
    expect(lacks(but({ typed: { amount: "300" } }), { a: 86 })).toEqual([
      "Only 86 L of A are left: you typed 300 L.",
    ]);
    // by hand: 86 L at 0.915 kg/L are 78.69 kg
    expect(lacks(but({ typed: { amount: "100" }, picked: { unit: "kg" } }), { A: 86 })).toEqual([
      "Only 79 kg of A are left: you typed 100 kg.",
    ]);
    // as Lots shows it, and not where that would say no lack
    expect(lacks(but({}), { A: 85.63 })).toEqual(["Only 86 L of A are left: you typed 100 L."]);
    expect(lacks(but({}), { A: 99.6 })).toEqual(["Only 99.6 L of A are left: you typed 100 L."]);
    expect(lacks(but({}), { A: -214 })).toEqual(["Nothing of A is left: you typed 100 L."]);
  });

  it("is told so of the lot that has not so much, of a mix", () => {
    const mix = but({ lots: ["A", "B"], shares: { A: "60" }, typed: { amount: "200" } });
    expect(lacks(mix, { A: 120, B: 50 })).toEqual(["Only 50 L of B are left: this takes 80 L."]);
    expect(lacks(mix, { A: 120, B: 80 })).toEqual([]);
  });

  it("is told nothing where the table says nothing of it", () => {
    expect(lacks(but({ typed: { amount: "300" } }), { A: undefined, B: 1 })).toEqual([]);
  });

  it("is told nothing once it is on record: its part is taken off there", () => {
    const { recorded } = seen(but({}));
    const done = viewOf(after(draftOf(but({})), { do: "recorded" }), ".", recorded);
    expect(lacksInStore(done, store({ A: 1 }))).toEqual([]);
  });

  it("is told so for whatever is more, and for nothing that is not", () => {
    const litres = fc.integer({ min: 1, max: 900 });
    fc.assert(
      fc.property(litres, litres, fc.constantFrom("A", "B"), (typed, left, lot) => {
        const said = lacks(but({ lots: [lot], typed: { amount: String(typed) } }), { [lot]: left });
        expect(said.length).toBe(typed > left * 1.001 ? 1 : 0);
      }),
    );
  });
});

describe("a lot that is used up", () => {
  it("is one of which the table shows 0 L or less", () => {
    const left = store({ A: 0.4, B: -3, C: 0.6, D: undefined });
    expect(["a", "B", "C", "D", "E"].map((lot) => isUsedUp(lot, left))).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });
});

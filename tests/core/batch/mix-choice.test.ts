import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chooseMix, type MixRule, type StoredLot } from "../../../src/core/batch/mix-choice";
import { quantity } from "../../../src/core/quantity/quantity";

const stored = (lot: string, acid: number, left: number, collected?: number): StoredLot => ({
  lot,
  acidValue: quantity("mg KOH/g", acid),
  left: quantity("kg", left),
  collected,
});
const store = [stored("young", 1, 50, 30), stored("middle", 3, 100, 20), stored("old", 6, 80, 10)];

const choose = (lots: readonly StoredLot[], amount: number, target: number, rule: MixRule) =>
  chooseMix(lots, quantity("kg", amount), quantity("mg KOH/g", target), rule);

const takenOf = (found: ReturnType<typeof choose>): Record<string, number> =>
  "lots" in found
    ? Object.fromEntries(found.lots.map(({ lot, taken }) => [lot, taken.toNumber()]))
    : {};

describe("choosing a mix of what is in store", () => {
  it("takes the least acid first, or of the oldest as much as the others can make up for", () => {
    expect(takenOf(choose(store, 100, 3, "least acid first"))).toEqual({ young: 50, middle: 50 });
    // by hand: 6 x + 50 + 3 (50 - x) = 300, x = 33.33; then middle 16.67 and all 50 of the young
    const oldest = takenOf(choose(store, 100, 3, "oldest first"));
    expect(oldest.old).toBeCloseTo(100 / 3, 5);
    expect(oldest.middle).toBeCloseTo(50 / 3, 5);
    expect(oldest.young).toBeCloseTo(50, 5);
  });

  it("says the best that can be had where no mix meets the target, and what there is where it is too little", () => {
    // by hand: 50 of 1 and 50 of 3 is 2
    const sour = choose(store, 100, 1.5, "oldest first");
    expect(sour.kind === "too sour" && sour.acidValue.toNumber()).toBe(2);
    const little = choose(store, 231, 5, "oldest first");
    expect(little.kind === "too little" && little.left.toNumber()).toBe(230);
  });

  const whole = (max: number) => fc.integer({ min: 1, max });
  const lots = fc
    .array(fc.tuple(whole(20), whole(12), whole(9)), { minLength: 1, maxLength: 4 })
    .map((all) =>
      all.map(([acid, left, day], at) => stored(`L${String(at)}`, acid, left, day * 10 + at)),
    );

  it("never takes more than is left, takes the whole amount, meets the target, and forgets no mix that would", () =>
    fc.assert(
      fc.property(lots, whole(30), whole(20), fc.boolean(), (all, amount, target, isOldest) => {
        const rule = isOldest ? "oldest first" : "least acid first";
        const found = choose(all, amount, target, rule);
        const inAll = all.reduce((sum, { left }) => sum + left.toNumber(), 0);
        expect(found.kind === "too little").toBe(inAll < amount);
        if (!("lots" in found)) return;
        const sum = found.lots.reduce((total, { taken }) => total + taken.toNumber(), 0);
        expect(sum).toBeCloseTo(amount, 9);
        for (const { taken, left, after } of found.lots) {
          expect(taken.toNumber()).toBeLessThanOrEqual(left.toNumber() + 1e-9);
          expect(after.toNumber()).toBeCloseTo(left.toNumber() - taken.toNumber(), 9);
        }
        // every way to share whole kilograms, by trying them all
        const ways = (at: number, rest: number): number[][] =>
          at === all.length
            ? rest === 0
              ? [[]]
              : []
            : Array.from(
                { length: Math.min(rest, all[at]?.left.toNumber() ?? 0) + 1 },
                (_, kg) => kg,
              ).flatMap((kg) => ways(at + 1, rest - kg).map((more) => [kg, ...more]));
        const meets = ways(0, amount).filter(
          (way) =>
            way.reduce((acid, kg, at) => acid + kg * (all[at]?.acidValue.toNumber() ?? 0), 0) <=
            target * amount,
        );
        if (meets.length > 0) expect(found.kind).toBe("mix");
        if (found.kind !== "mix") return;
        expect(found.acidValue.toNumber()).toBeLessThanOrEqual(target * (1 + 1e-8));
        if (!isOldest) return;
        const [oldest] = all
          .map((each, at) => ({ ...each, at }))
          .sort((a, b) => (a.collected ?? 0) - (b.collected ?? 0));
        const most = Math.max(0, ...meets.map((way) => way[oldest?.at ?? 0] ?? 0));
        expect(takenOf(found)[oldest?.lot ?? ""] ?? 0).toBeGreaterThanOrEqual(most - 1e-6);
      }),
      { numRuns: 150 },
    ));

  // by hand: a billionth of 3 is 0.000000003
  it("meets a target that its acid passes by a billionth, a rounding error, and by no more", () => {
    const kind = (acid: string) =>
      chooseMix(
        [{ ...stored("only", 1, 50), acidValue: quantity("mg KOH/g", acid) }],
        quantity("kg", 50),
        quantity("mg KOH/g", 3),
        "oldest first",
      ).kind;
    expect(["3.000000003", "3.0000000031"].map(kind)).toEqual(["mix", "too sour"]);
  });

  it("leaves out a lot of which nothing is left, or less", () => {
    const lots = [stored("empty", 1, 0, 1), stored("short", 1, -5, 2), stored("full", 2, 50, 3)];
    for (const rule of ["oldest first", "least acid first"] as const) {
      expect(takenOf(choose(lots, 50, 3, rule))).toEqual({ full: 50 });
    }
    const little = choose(lots, 51, 3, "oldest first");
    expect(little.kind === "too little" && little.left.toNumber()).toBe(50);
  });
});

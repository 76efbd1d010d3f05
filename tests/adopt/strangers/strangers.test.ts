/**
 * Logbooks of strangers, under headings that the product's words were not made from. A longer run:
 * npm run strangers
 */
import { describe, expect, it } from "vitest";
import { type BookKind, kinds } from "./book";
import { measureKind } from "./measure";

const books = 40;
const shares: readonly (readonly [BookKind, number])[] = [
  ["ordinary", 0.99],
  ["untidy", 0.96],
  ["other languages", 0.9],
  ["odd layouts", 0.85],
];

describe.each(shares)("logbooks of strangers, %s", (kind, share) => {
  const found = measureKind(kind, books);

  it(`have ${String(share * 100)} in 100 columns read rightly at first guess`, () => {
    expect(found.columns).toBeGreaterThan(books * 8);
    expect(found.right / found.columns).toBeGreaterThanOrEqual(share);
  });

  it("have fewer than one column in 100 taken for what it is not, and none of those called sure", () => {
    expect(found.wrong / found.columns).toBeLessThan(0.01);
    expect(
      found.misses
        .filter(({ isSure }) => isSure)
        .map(({ heading, wanted, got }) => `${heading}: ${wanted}, ${got}`),
    ).toEqual([]);
  });
});

/** What nobody has tuned the words to is read less well: see tests/measured/strangers.md. */
const unseen: readonly (readonly [BookKind, number])[] = [
  ["ordinary", 0.95],
  ["untidy", 0.94],
  ["other languages", 0.9],
  ["odd layouts", 0.85],
];

describe.each(unseen)(
  "logbooks under headings that the words were not made from, %s",
  (kind, share) => {
    it(`have ${String(share * 100)} in 100 columns read rightly, and fewer than 2 in 100 wrongly`, () => {
      const { right, wrong, columns } = measureKind(kind, 15, 1, "third");
      expect(columns).toBeGreaterThan(15 * 8);
      expect(right / columns).toBeGreaterThanOrEqual(share);
      expect(wrong / columns).toBeLessThan(0.02);
    });
  },
);

describe.each(shares)("logbooks of strangers under another hand's headings, %s", (kind, share) => {
  it(`have ${String(share * 100)} in 100 columns read rightly too, and no wrong one called sure`, () => {
    const { right, columns, wrongAndSure } = measureKind(kind, 15, 1, "another");
    expect(columns).toBeGreaterThan(15 * 8);
    expect(right / columns).toBeGreaterThanOrEqual(share);
    expect(wrongAndSure).toBe(0);
  });
});

describe.each(kinds)("logbooks under the headings of the hands after them, %s", (kind) => {
  it.each(["fourth", "fifth", "sixth", "seventh"] as const)(
    "of the %s have fewer than one column in 100 taken for what it is not, none of them called sure",
    (hand) => {
      const { wrong, columns, wrongAndSure } = measureKind(kind, 15, 1, hand);
      expect(columns).toBeGreaterThan(15 * 8);
      expect(wrong / columns).toBeLessThan(0.01);
      expect(wrongAndSure).toBe(0);
    },
  );
});

describe.each([true, false])(
  "with words that mean nothing over three columns of ten",
  (keepsUnits) => {
    it.each(kinds)(
      `and their units ${keepsUnits ? "kept" : "dropped"}, most of these are told in %s logbooks, fewer than one in 100 wrongly, none surely`,
      (kind) => {
        const { right, wrong, columns, misses } = measureKind(kind, 60, 1, "first", {
          inHundred: 30,
          keepsUnits,
        });
        expect(columns).toBeGreaterThan(60 * 3);
        expect(right / columns).toBeGreaterThanOrEqual(0.6);
        expect(wrong / columns).toBeLessThan(0.01);
        expect(misses.filter(({ isSure }) => isSure)).toEqual([]);
      },
    );
  },
);

/**
 * Logbooks made from makers' habits, re-checked the way the pane does it. A longer run (2,400 rows):
 * HABIT_BOOKS=120 npx vitest run habits
 */
import { beforeAll, describe, expect, it } from "vitest";
import { makeLogbook } from "./logbook";
import { noScore, type Score, score } from "./scoring";

const books = Number(process.env["HABIT_BOOKS"] ?? 12);
const rows = 20;

describe("logbooks of makers with habits of their own", () => {
  const total: Score = noScore();

  beforeAll(async () => {
    for (let seed = 1; seed <= books; seed += 1)
      await score(makeLogbook(seed, { rows, mistakes: 0.15 }), total);
  }, 1_200_000);

  it("are found where they stand", () => {
    expect(total.rows).toBe(books * rows);
    expect(total.lost).toBe(0);
  });

  it("have no honest row accused", () => {
    expect(total.notes.filter((note) => /ACCUSED|STRAY/.test(note))).toEqual([]);
    expect(total.honest).toBeGreaterThan(total.rows / 2);
  });

  it("have at least 95 in 100 of the mistakes above tolerance noticed", () => {
    expect(total.planted).toBeGreaterThan(books);
    expect(total.noticed / total.planted).toBeGreaterThanOrEqual(0.95);
  });

  it("have at least 85 in 100 of those noticed called by their name, of few", () => {
    // of a larger number more: tests/measured/strangers.md
    expect(total.named / total.noticed).toBeGreaterThanOrEqual(0.85);
  });

  it("have what a mistake did to the dose right to 1 % in at least 98 of 100", () => {
    expect(total.effectsRight / total.effects).toBeGreaterThanOrEqual(0.98);
  });
});

describe("logbooks whose makers leave open whether grams of lye are pure or as weighed", () => {
  const total: Score = noScore();
  // Other makers than those above.
  const first = 5000;

  beforeAll(async () => {
    for (let seed = first; seed < first + books; seed += 1)
      await score(makeLogbook(seed, { rows, mistakes: 0.15, leavesOpen: true }), total);
  }, 1_200_000);

  it("have no honest row accused", () => {
    expect(total.notes.filter((note) => /ACCUSED|STRAY/.test(note))).toEqual([]);
    expect(total.honest).toBeGreaterThan(total.rows / 2);
  });

  it("have what is said that a mistake did to the dose right in at least 98 of 100", () => {
    expect(total.noticed).toBeGreaterThan(books);
    expect(total.effects).toBeGreaterThan(0);
    expect(total.effectsRight / total.effects).toBeGreaterThanOrEqual(0.98);
  });
});

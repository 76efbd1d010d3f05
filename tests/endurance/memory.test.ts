/**
 * Seeded random use of the pane's logic on a workbook in memory, against a model of what both should
 * hold. SEED and STEPS run one of them again.
 */
import { describe, expect, it } from "vitest";
import { times } from "../thorough";
import { endure } from "./run";

const { SEED, STEPS } = process.env;
const steps = Number(STEPS ?? 2000);
const seeds =
  SEED === undefined ? Array.from({ length: times(2) }, (_, at) => at + 1) : [Number(SEED)];

describe("a long day at the bench and in the workbook", () => {
  it.each(seeds)(
    "loses nothing, writes over nothing and works out nothing wrong: seed %i",
    { timeout: 300_000 },
    async (seed) => {
      const tally = await endure(seed, steps);
      // not a quiet day: titrations did get into the workbook
      if (steps >= 2000) expect(tally.get("titration recorded") ?? 0).toBeGreaterThan(0);
    },
  );
});

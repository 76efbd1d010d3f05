/**
 * Seeded random use of the built page, against a model of what was typed: cells, undo and redo, sheets,
 * tasks of the pane, files, reloads. SEED and STEPS run one of them again; `npm run endure -- --browser`
 * runs longer ones.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../browser";
import { openEndurance } from "../endurance/day";

const { SEED, STEPS } = process.env;
const seeds = SEED === undefined ? [1] : [Number(SEED)];
const steps = Number(STEPS ?? 12);

describe.runIf(hasBrowser)("a long day on the page", () => {
  let opened: Awaited<ReturnType<typeof openEndurance>>;
  beforeAll(async () => {
    opened = await openEndurance();
  });
  afterAll(() => opened.close());

  it.each(seeds)(
    "loses nothing that was typed, and the page never complains: seed %i",
    { timeout: 600_000 },
    async (seed) => {
      const tally = await opened.run(seed, steps);
      if (steps >= 40) expect(tally.get("type in a cell") ?? 0).toBeGreaterThan(5);
    },
  );
});

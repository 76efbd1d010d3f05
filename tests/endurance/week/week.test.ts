/**
 * A week in a logbook of one's own, on its file: rows and sheets come and go between records, and what
 * points at them follows. SEED and STEPS run one of them again; `npm run endure -- --week` runs many.
 */
import { describe, expect, it } from "vitest";
import { times } from "../../thorough";
import { week } from "./run-week";

const { SEED, STEPS } = process.env;
const seeds =
  SEED === undefined ? Array.from({ length: times(1) }, (_, at) => at + 1) : [Number(SEED)];

describe("a week in a logbook of one's own", () => {
  it.each(seeds)(
    "loses no row and no reference to one: seed %i",
    { timeout: 300_000 },
    async (seed) => {
      const tally = await week(seed, Number(STEPS ?? 60));
      if (STEPS === undefined) expect(tally.get("insert rows") ?? 0).toBeGreaterThan(2);
    },
  );
});

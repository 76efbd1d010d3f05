import { describe, expect, it } from "vitest";
import { fineBench, rows, simulateCoverage } from "../../../src/cli/coverage/interval";

/** The simulation is seeded: the same on every machine. `npm run bench:coverage` prints it whole. */
describe("the stated 95 % interval in 20,000 simulated titrations", () => {
  it.each(rows)(
    "holds the true % FFA in 93 to 98.5 % of them, $titres titres and $blanks blanks",
    ({ titres, blanks, seed }) => {
      for (const step of fineBench.steps) {
        const { scatter } = fineBench;
        const held = simulateCoverage({ titres, blanks, step, scatter, fromZero: false }, seed);
        expect(held, `step ${step}`).toBeGreaterThanOrEqual(0.93);
        expect(held, `step ${step}`).toBeLessThanOrEqual(0.985);
      }
    },
  );
});

import { describe, expect, it } from "vitest";
import { rows, shareFlagged, slips, steps } from "../../../src/cli/coverage/false-alarms";
import { shareDoubted } from "../../../src/cli/coverage/judged";
import { OUTLIERS } from "../../../src/functions/replicates/outliers";

/** The simulation is seeded: the same on every machine. `npm run bench:coverage` prints it whole. */
describe("the outlier test on 20,000 simulated sets for each bench", () => {
  it.each(rows)(
    "flags fewer than 6 % of honest sets of $count at a scatter of $scatter mL, whatever the step",
    ({ count, scatter, seed }) => {
      for (const step of steps) {
        const { graduated, plain } = shareFlagged({ count, scatter, step }, 0, seed);
        expect(graduated, `step ${step}`).toBeLessThan(0.06);
        expect(graduated).toBeLessThanOrEqual(plain);
      }
    },
  );

  it("does what the plain test does not: three honest readings to 0.1 mL are not called suspect", () => {
    const bench = { count: 3, scatter: 0.05, step: 0.1 };
    const { graduated, plain } = shareFlagged(bench, 0, 1);
    expect(plain).toBeGreaterThan(0.5);
    expect(graduated).toBeLessThan(0.001);
  });

  it("finds a slip of 1 mL among four readings to 0.01 mL nearly always, among three seldom", () => {
    const [, large = 0] = slips;
    const power = (count: number): number =>
      shareFlagged({ count, scatter: 0.05, step: 0.01 }, large, 1).graduated;
    expect(power(4)).toBeGreaterThan(0.9);
    expect(power(3)).toBeLessThan(0.5);
  });

  it("does what the note of OUTLIERS says of it: a slip of 1 mL read to 0.05 mL", () => {
    const [, large = 0] = slips;
    const power = (count: number): number =>
      shareFlagged({ count, scatter: 0.05, step: 0.05 }, large, 1000 * count + 5).graduated;
    const notes = OUTLIERS.notes.join(" ");
    expect(notes).toContain("a slip of 1 mL among three is never flagged");
    expect(power(3)).toBe(0);
    expect(notes).toContain("among four in 95 of 100 sets (simulated)");
    expect(Math.round(100 * power(4))).toBe(95);
  });
});

/** Ten earlier titrations of three titres: twenty degrees of freedom. */
const record = { count: 3, step: 0.05, earlier: 10 };
const runs = 3000;

describe("three readings judged by a record of the same hand", () => {
  it.each([0.03, 0.05])(
    "are doubted in fewer than 6 % of honest sets, scatter %f mL",
    (scatter) => {
      expect(shareDoubted({ ...record, scatter }, 0, 5, runs)).toBeLessThan(0.06);
    },
  );

  it.each([0.03, 0.05])("give a slip of 0.3 mL away in 95 of 100, scatter %f mL", (scatter) => {
    expect(shareDoubted({ ...record, scatter }, 0.3, 5, runs)).toBeGreaterThan(0.95);
  });
});

describe("three readings without a record", () => {
  const bench = { count: 3, step: 0.05 };

  it("are called apart in 4 to 7 of 100 honest sets at a scatter of 0.05 mL, in none at 0.03", () => {
    const wide = shareDoubted({ ...bench, scatter: 0.05 }, 0, 5, 5000);
    expect(wide).toBeGreaterThan(0.04);
    expect(wide).toBeLessThan(0.07);
    expect(shareDoubted({ ...bench, scatter: 0.03 }, 0, 5, runs)).toBeLessThan(0.005);
  });

  it("give a slip of 0.3 mL away in 98 of 100 or more", () => {
    expect(shareDoubted({ ...bench, scatter: 0.05 }, 0.3, 5, runs)).toBeGreaterThan(0.98);
  });
});

/** Our statistics beside what R and LibreOffice make of the same questions (committed fixtures). */
import { describe, expect, it } from "vitest";
import { exact } from "../../src/core/exact/exact";
import { mean } from "../../src/core/exact/lists";
import { criticalRangeFactors } from "../../src/core/reference/critical-range";
import { dixonCritical } from "../../src/core/reference/dixon-critical";
import { sampleDeviation } from "../../src/core/replicates/deviations";
import { fTail } from "../../src/core/replicates/f-tail";
import { grubbsCritical } from "../../src/core/replicates/grubbs";
import { studentT, twoSidedTail } from "../../src/core/replicates/student-t";
import {
  type DeviationRow,
  fixture,
  type FisherRow,
  type GrubbsRow,
  type StudentRow,
} from "./fixtures";
import { asked, type Asked } from "./from-libreoffice";

/** The largest relative difference of pairs, with the pair it is of. */
function worst(pairs: readonly (readonly [ours: number, theirs: number])[]): {
  relative: number;
  of: string;
} {
  return pairs.reduce(
    (most, [ours, theirs]) => {
      const relative = Math.abs(ours - theirs) / Math.abs(theirs);
      return relative > most.relative
        ? { relative, of: `got ${ours}, expected ${theirs}, relative ${relative}` }
        : most;
    },
    { relative: 0, of: "" },
  );
}

const near = (
  pairs: readonly (readonly [ours: number, theirs: number])[],
  within: number,
): void => {
  const found = worst(pairs);
  expect(found.relative, found.of).toBeLessThanOrEqual(within);
};

const ourDeviation = (readings: readonly number[]): number => sampleDeviation(readings.map(exact));
const ourMean = (readings: readonly number[]): number => mean(readings.map(exact)).toNumber();

/** R and LibreOffice subtract doubles: beside a mean of 100 they cannot see below this. */
const blur = (readings: readonly number[]): number => 4e-15 * Math.max(...readings);

const sets = fixture<DeviationRow>("sample-deviations").rows;

describe("beside R", () => {
  it("Student t agrees to 1e-12 for 1 to 120 degrees of freedom, from 0.5 to 1e-6", () => {
    const rows = fixture<StudentRow>("student-t").rows;
    expect(rows).toHaveLength(1200);
    near(
      rows.map(([freedom, outside, t]) => [studentT(outside, freedom), t]),
      1e-12,
    );
  });

  it("the probability beyond t agrees to 1e-12, however small", () => {
    near(
      fixture<StudentRow>("student-tail").rows.map(([freedom, t, outside]) => [
        twoSidedTail(t, freedom),
        outside,
      ]),
      1e-12,
    );
  });

  it("the probability beyond F agrees to 1e-12, for degrees of freedom odd and even, to 1000", () => {
    const rows = fixture<FisherRow>("f-tail").rows;
    expect(rows).toHaveLength(1152);
    near(
      rows.map(([first, second, f, beyond]) => [fTail(f, first, second), beyond]),
      1e-12,
    );
  });

  it("Grubbs' critical values agree to 1e-12 for 3 to 100 readings at 10, 5 and 1 %", () => {
    const rows = fixture<GrubbsRow>("grubbs-critical").rows;
    expect(rows).toHaveLength(294);
    near(
      rows.map(([count, alpha, critical]) => [grubbsCritical(count, alpha), critical]),
      1e-12,
    );
  });

  it("means and sample deviations of 500 sets agree", () => {
    expect(sets).toHaveLength(500);
    near(
      sets.map(([readings, theirs]) => [ourMean(readings), theirs]),
      1e-14,
    );
    for (const [readings, , theirs] of sets) {
      const ours = ourDeviation(readings);
      expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-13 * theirs + blur(readings));
    }
  });

  it("the printed factors of the critical range are the studentized range to one decimal", () => {
    const rows = fixture<[number, number]>("range-factors").rows;
    expect(rows.map(([count]) => count)).toEqual([...criticalRangeFactors.keys()]);
    for (const [count, factor] of rows) {
      expect(criticalRangeFactors.get(count)).toBe(Number(factor.toFixed(1)));
    }
  });

  it("Dixon's critical values are the exact integral to four decimals", () => {
    const rows = fixture<[number, number, number, number]>("dixon-critical").rows;
    expect(rows.map(([count]) => count)).toEqual([...dixonCritical.keys()]);
    for (const [count, ...exactly] of rows) {
      const ours = dixonCritical.get(count);
      const theirs = exactly.map((value) => Number(value.toFixed(4)));
      expect([ours?.at90, ours?.at95, ours?.at99]).toEqual(theirs);
    }
  });
});

describe("beside LibreOffice, through plain formulas", () => {
  const theirs = fixture("libreoffice") as unknown as Record<keyof Asked, number[]>;
  const questions = asked();
  const answer = (kind: keyof Asked, place: number): number => theirs[kind][place] ?? Number.NaN;

  it("Student t and Grubbs' critical values agree to the 15 digits it writes", () => {
    near(
      questions.student.map(([freedom, p], place) => [
        studentT(p, freedom),
        answer("student", place),
      ]),
      1e-13,
    );
    near(
      questions.grubbs.map(([count, alpha], place) => [
        grubbsCritical(count, alpha),
        answer("grubbs", place),
      ]),
      1e-13,
    );
  });

  it("means and sample deviations of 500 sets agree", () => {
    for (const [place, [readings]] of sets.entries()) {
      expect(ourMean(readings)).toBeCloseTo(answer("means", place), 11);
      const deviation = answer("deviations", place);
      expect(Math.abs(ourDeviation(readings) - deviation)).toBeLessThanOrEqual(
        1e-13 * deviation + blur(readings),
      );
    }
  });
});

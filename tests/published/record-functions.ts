/** What the published cases about a record may ask for. */
import { exact } from "../../src/core/exact/exact";
import { quantity } from "../../src/core/quantity/quantity";
import { action, controlChart, limitAt } from "../../src/core/record/control-chart";
import { type OnDay, strengthOn } from "../../src/core/record/strength-line";
import { usualFreedom, usualScatter } from "../../src/core/record/usual-scatter";
import { fTail } from "../../src/core/replicates/f-tail";
import { studentT } from "../../src/core/replicates/student-t";
import { isProblem, type Outcome } from "../../src/core/problem/problem";

interface Sets {
  sets: string[][];
}

const recordOf = ({ sets }: Sets) =>
  sets.map((titres) => ({
    titres: titres.map((titre) => quantity("mL", titre)),
    blanks: [],
    samples: undefined,
  }));

const there = <T>(value: Outcome<T>): T => {
  if (isProblem(value)) throw new Error(JSON.stringify(value.fields));
  return value;
};

/** Sets of five with a given standard deviation: two beside the mean, so that s^2 = 2 d^2 / 4. */
const withDeviation = (deviation: number): string[] => {
  const off = deviation * Math.SQRT2;
  return [1000 - off, 1000, 1000, 1000, 1000 + off].map(String);
};

const lines: Record<string, { days: string; strengths: string }> = {
  "H.3": {
    days: "21.521 22.012 22.512 23.003 23.507 23.999 24.513 25.002 25.503 26.010 26.511",
    // corrections, 1 added to each: the product's strengths are above 0
    strengths: "0.829 0.831 0.834 0.841 0.836 0.835 0.844 0.843 0.841 0.839 0.840",
  },
};

const lineOf = (name: string): OnDay[] => {
  const { days = "", strengths = "" } = lines[name] ?? {};
  const found = strengths.split(" ");
  return days.split(" ").map((day, place) => [exact(day), quantity("mol/L", found[place] ?? "")]);
};

const lineOn = (name: string, day: string) => there(strengthOn(lineOf(name), exact(day)));

const series: Record<string, string> = {
  individuals: "49.6 47.6 49.9 51.3 47.8 51.2 52.6 52.4 53.6 52.1",
  weighted:
    "52.0 47.0 53.0 49.3 50.1 47.0 51.0 50.1 51.2 50.5 49.6 47.6 49.9 51.3 47.8 51.2 52.6 52.4 53.6 52.1",
};
const valuesOf = (name: string) => (series[name] ?? "").split(" ").map(exact);

export const recordFunctions = {
  pooledDeviation: (given: Sets) => there(usualScatter(recordOf(given), undefined)),
  pooledFreedom: (given: Sets) => there(usualFreedom(recordOf(given))),
  pooledOfDeviations: (given: { deviations: number[]; each: number }) =>
    there(usualScatter(recordOf({ sets: given.deviations.map(withDeviation) }), undefined)),
  beyondF: (given: { f: number; first: number; second: number }) =>
    fTail(given.f, given.first, given.second),
  lineAt: (given: { line: string; day: string }) =>
    lineOn(given.line, given.day).strength.toNumber(),
  lineUncertaintyAt: (given: { line: string; day: string }) =>
    lineOn(given.line, given.day).halfWidth / studentT(0.05, lineOf(given.line).length - 2),
  lineSlope: (given: { line: string }) => {
    const { change, strength } = lineOn(given.line, "20");
    return change.times(strength).div(3000).toNumber();
  },
  lineScatter: (given: { line: string }) => lineOn(given.line, "20").scatter,
  control: (given: { values: string; figure: "centre" | "movingRange" | "upper" | "lower" }) => {
    const chart = there(controlChart(valuesOf(given.values), undefined, undefined, exact("0.2")));
    const found = {
      centre: chart.centre,
      movingRange: chart.movingRange,
      upper: limitAt(chart, action),
      lower: limitAt(chart, -action),
    };
    return found[given.figure].toNumber();
  },
  /** A chart whose first two values set the centre: both at the published start. */
  weightedMean: (given: { start: string; weight: string; values: string }) => {
    const start = exact(given.start);
    const values = [start, start, ...valuesOf(given.values)];
    const chart = controlChart(values, exact(2), undefined, exact(given.weight));
    return there(chart).weighted.toNumber();
  },
} as const;

import { isProblem, problem } from "../../core/problem/problem";
import { fewestForSlope, steepness } from "../../core/titration/probe";
import { worksheetFunction } from "../define";
import { pointsOf, probeArguments } from "./probe-arguments";

export const STEEPNESS = worksheetFunction(
  "STEEPNESS",
  "The slope of a probe's curve, step by step: mL at the middle of each, and slope.",
  probeArguments,
  (given) => {
    const points = pointsOf(given);
    if (isProblem(points)) return points;
    if (points.length < fewestForSlope) {
      return problem({
        code: "too-few",
        argument: "readings",
        called: "reading",
        given: points.length,
        needed: fewestForSlope,
      });
    }
    const steps = steepness(points);
    return isProblem(steps) ? steps : steps.map(({ middle, slope }) => [middle, slope]);
  },
  {
    result: "mL and slope, a row for each step",
    equation: "difference of {readings} / difference of {volumes}",
    notes: ["Draw the second column against the first: the peak is where ENDPOINT lies."],
    example: {
      formula: "=TITRE.STEEPNESS({24,24.1,24.2},{0.174,0.183,0.194})",
      gives: [
        [24.05, 0.09],
        [24.15, 0.11],
      ],
    },
    sources: ["iso660", "harvey"],
  },
);

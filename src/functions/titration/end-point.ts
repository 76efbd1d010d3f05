import { isProblem } from "../../core/problem/problem";
import { endPoint } from "../../core/titration/probe";
import { worksheetFunction } from "../define";
import { pointsOf, probeArguments } from "./probe-arguments";

export const ENDPOINT = worksheetFunction(
  "ENDPOINT",
  "The end point by a probe, mL: where the curve of pH or mV is steepest.",
  probeArguments,
  (given) => {
    const points = pointsOf(given);
    if (isProblem(points)) return points;
    const found = endPoint(points);
    return isProblem(found) ? found : found.volume;
  },
  {
    result: "mL",
    equation: "second difference of {readings} by {volumes} = 0",
    notes: [
      "For dark oil that hides a colour: ISO 660 lets a probe decide. Six readings or more, with two steps on each side of the steepest.",
      "The slope of each step stands at its middle, the change from slope to slope between those; the end point is where that change passes through zero, by a straight line.",
      "It is known no better than the steepest step is wide: go in steps of 0.05 to 0.1 mL where the probe moves most.",
      "A pair of which one cell is empty or 0 is left out: type a reading of exactly 0 mV as 0.01.",
    ],
    example: {
      formula: "=TITRE.ENDPOINT({1,2,3,4,5,6},{7,7.5,8.5,10.5,11.5,12})",
      gives: 3.5,
    },
    sources: ["iso660", "harvey"],
  },
);

import { computed, exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { action, controlChart, limitAt, warning } from "../../core/record/control-chart";
import { controlInWords } from "../../core/record/control-words";
import { limits } from "../../core/reference/limits";
import { usual } from "../../core/reference/defaults";
import { usualNumber } from "../arguments";
import { worksheetFunction } from "../define";
import { controlArguments } from "./control-arguments";

export const CONTROL = worksheetFunction(
  "CONTROL",
  "A control chart of single values in the order of time: centre, limits, weighted mean, verdict.",
  {
    ...controlArguments,
    weight: usualNumber(
      limits.weight,
      usual.controlWeight,
      "Weight of a new value in the weighted mean: less sees slower shifts.",
    ),
  },
  (given) => {
    const chart = controlChart(given.values.filled, given.baseline, given.step, given.weight);
    if (isProblem(chart)) return chart;
    const width = computed(chart.weightedWidth);
    return [
      ["values", exact(chart.values.length)],
      ["centre", chart.centre],
      ["mean moving range", chart.movingRange],
      ["sigma", computed(chart.sigma)],
      ["lower action limit", limitAt(chart, -action)],
      ["lower warning limit", limitAt(chart, -warning)],
      ["upper warning limit", limitAt(chart, warning)],
      ["upper action limit", limitAt(chart, action)],
      ["weighted mean now", chart.weighted],
      ["its lower limit", chart.centre.minus(width)],
      ["its upper limit", chart.centre.plus(width)],
      ["verdict", controlInWords(chart)],
    ];
  },
  {
    result: "label and figure, row by row",
    equation: "mean({values}) and 2 or 3 * mean moving range * sqrt(pi) / 2 to either side",
    notes: [
      "Five values or more. The action limits are 3 sigma from the centre, the warning limits 2.",
      "For blanks, titrant strengths, or an oil kept to be titrated again and again.",
      "The weighted mean starts at the centre and takes in every value: a slow shift shows there first.",
    ],
    example: {
      formula: "=TITRE.CONTROL({49.6,47.6,49.9,51.3,47.8,51.2,52.6,52.4,53.6,52.1})",
      gives: [
        ["values", 10],
        ["centre", 50.81],
        ["mean moving range", 1.87777777777778],
        ["sigma", 1.66413722668351],
        ["lower action limit", 45.8175883199495],
        ["lower warning limit", 47.481725546633],
        ["upper warning limit", 54.138274453367],
        ["upper action limit", 55.8024116800505],
        ["weighted mean now", 51.583232968704],
        ["its lower limit", 49.1458627733165],
        ["its upper limit", 52.4741372266835],
        ["verdict", "All 10 are in control: nothing here that chance does not explain."],
      ],
    },
    sources: ["nistControl", "nistWeighted"],
  },
);

import { neutralisedWord } from "../../core/titration/neutralised";
import { computed } from "../../core/exact/exact";
import { isProblem, type Outcome, problem } from "../../core/problem/problem";
import { type Advice, adviceInWords, bestChange } from "../../core/uncertainty/advice";
import type { BenchFigures } from "../../core/uncertainty/bench";
import { asFfa, type Contribution, contributions } from "../../core/uncertainty/contributions";
import { expand, type Expanded } from "../../core/uncertainty/expanded";
import { shareOf, shareOfPart } from "../../core/uncertainty/shares";
import { normal95 } from "../../core/uncertainty/standard-uncertainty";
import type { Result, ResultTable } from "../answer";
import { worksheetFunction } from "../define";
import { benchOf, titrationArguments } from "./titration";

const header: Result[] = [
  "source",
  "value",
  "unit",
  "standard uncertainty",
  "as % FFA",
  "share of ± squared, %",
];

const rowOf =
  (whole: Expanded) =>
  (part: Contribution): Result[] => [
    part.source,
    part.value === undefined ? neutralisedWord : computed(part.value),
    part.unit,
    computed(part.standard),
    computed(asFfa(part)),
    computed(shareOf(part, whole)),
  ];

export const freedomWords = (freedom: string, plural: string): string =>
  `t for ${freedom} degree${plural} of freedom`;

/** The labels of the closing rows. */
export const closingLabels = {
  scatter: "scatter part, and its t",
  rest: "rest, and its factor",
  result: "FFA, and its expanded uncertainty",
  advice: "the step that would lower it most",
};
export const normalWord = "normal";

/** What the parts come to: each closing row has its factor, and its uncertainty as % FFA. */
function closing(bench: BenchFigures, whole: Expanded, advice: Advice): ResultTable {
  const { halfWidth, scatter, rest, t } = whole;
  const share = (factor: number, part: number) => computed(shareOfPart(factor, part, halfWidth));
  const freedom = freedomWords(String(bench.freedom), bench.freedom === 1 ? "" : "s");
  return [
    [closingLabels.scatter, computed(t), freedom, "", computed(scatter), share(t, scatter)],
    [closingLabels.rest, computed(normal95), normalWord, "", computed(rest), share(normal95, rest)],
    [closingLabels.result, computed(bench.ffa), "%", "", computed(halfWidth), ""],
    [closingLabels.advice, adviceInWords(advice), "", "", computed(advice.after), ""],
  ];
}

function budget(bench: BenchFigures): Outcome<ResultTable> {
  const parts = contributions(bench);
  const whole = expand(bench);
  const advice = bestChange(bench);
  // masses of 1e-320 g are within the limits, and beyond what doubles can be divided by
  const isShowable = Number.isFinite(advice.before) && Number.isFinite(advice.after);
  if (!isShowable) return problem({ code: "too-large-to-show" });
  return [header, ...parts.map(rowOf(whole)), ...closing(bench, whole, advice)];
}

export const BUDGET = worksheetFunction(
  "BUDGET",
  "Where the uncertainty of the % FFA comes from, row by row, and what to improve first.",
  titrationArguments,
  (given) => {
    const bench = benchOf(given);
    return isProblem(bench) ? bench : budget(bench);
  },
  {
    result: "source, value, unit, standard uncertainty, as % FFA, share of ± squared",
    equation: "u(FFA)^2 = sum((dFFA/dx * u(x))^2)",
    notes: [
      "Scatter is expanded by Student t, everything else by 1.96, and the two are added as squares: the shares are of that sum.",
      "A neutralised solvent has a reading too: the shade it was brought to.",
      "The advice works the uncertainty out anew with one thing improved at a time: a tenth of the balance step, half the burette step, one more titre, one more blank, ten times the sample (where that is at most 56.4 g and 50 mL), a titrant standardised against KHP on the same balance (0.5 g of it to 0.01 g is 1.6 %, to 0.001 g 0.3 %).",
    ],
    example: {
      formula: '=TITRE.BUDGET({2.45,2.45,2.45},"neutralised",0.1,{7.05},0.1,0.01)',
      gives: [
        ["source", "value", "unit", "standard uncertainty", "as % FFA", "share of ± squared, %"],
        ["titre scatter", 2.45, "mL", 0, 0, 0],
        ["blank scatter", "neutralised", "mL", 0, 0, 0],
        ["titre reading", 2.45, "mL", 0.0408248290463863, 0.0163299316185545, 49.9698260770557],
        [
          "blank reading",
          "neutralised",
          "mL",
          0.0408248290463863,
          0.0163299316185545,
          49.9698260770557,
        ],
        ["titrant", 0.1, "mol/L", 0, 0, 0],
        ["weighing", 7.05, "g", 0.00408248290463863, 0.000567494077524235, 0.0603478458885422],
        ["sample by volume", 7.05, "g", 0, 0, 0],
        ["scatter part, and its t", 4.302652729749464, "t for 2 degrees of freedom", "", 0, 0],
        ["rest, and its factor", 1.959963984540054, "normal", "", 0.0231009822921312, 100],
        ["FFA, and its expanded uncertainty", 0.98, "%", "", 0.0452770933000747, ""],
        [
          "the step that would lower it most",
          "A burette read to 0.05 mL would bring ±0.045 to ±0.023 % FFA; nothing else helps as much.",
          "",
          "",
          0.0226590301960613,
          "",
        ],
      ],
    },
    sources: ["gum", "quam", "aocsCa5a"],
  },
);

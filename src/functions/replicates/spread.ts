import { computed, exact } from "../../core/exact/exact";
import { mean } from "../../core/exact/lists";
import { isProblem } from "../../core/problem/problem";
import { type Judgement, judgement } from "../../core/replicates/judgement";
import { outlierTest, type ReplicateSet } from "../../core/replicates/outlier-test";
import { scatterOf } from "../../core/replicates/spread";
import { verdict } from "../../core/replicates/verdict";
import type { ResultTable } from "../answer";
import { worksheetFunction } from "../define";
import { replicateArguments, setOf } from "./replicate-set";

/** Where a figure cannot be had, a word: the rest of the table still spills. */
export const noSpread = "one reading: no spread";
export const noTest = "no test";
export const noRecord = "no usual scatter given";

export const intervalLabel = (confidence: string): string =>
  `half-width of the ${confidence} % interval, scatter alone, mL`;

const scatterRows = (set: ReplicateSet): ResultTable => {
  const scatter = scatterOf(set);
  const figure = (value: number | undefined) => (value === undefined ? noSpread : computed(value));
  return [
    ["standard deviation, mL", figure(scatter?.deviation)],
    ["relative standard deviation, %", figure(scatter?.relative)],
    ["range, mL", scatter?.range ?? noSpread],
    [intervalLabel(set.confidence.toString()), figure(scatter?.halfWidth)],
  ];
};

const testRows = (set: ReplicateSet): ResultTable => {
  const found = outlierTest(set);
  const figure = (value: number | undefined) => (value === undefined ? noTest : computed(value));
  return [
    ["reading tested, mL", found?.reading ?? noTest],
    ["G: how far off, in standard deviations", figure(found?.plain)],
    ["G with graduation: with the step that was read", figure(found?.graduated)],
    ["critical G: above it a reading is suspect", figure(found?.critical)],
    ["p, two-sided: how often chance alone goes so far", figure(found?.probability)],
  ];
};

/** By the record: the farthest reading, what the usual scatter explains, and how well it is known. */
const recordRows = ({ usual, judged }: ReplicateSet, found: Judgement): ResultTable => {
  const known = usual && judged.length > 1 ? found : undefined;
  const figure = (value: number | undefined) =>
    usual ? (value === undefined ? noTest : computed(value)) : noRecord;
  return [
    ["farthest from the mean, mL", figure(known?.farthest)],
    ["explained by the usual scatter, mL", figure(known?.allowed)],
    ["degrees of freedom of the usual scatter", figure(usual?.freedom)],
  ];
};

export const SPREAD = worksheetFunction(
  "SPREAD",
  "The replicates in figures: mean, scatter, range, interval, outlier test and verdict.",
  replicateArguments,
  (given) => {
    const set = setOf(given);
    if (isProblem(set)) return set;
    const found = judgement(set);
    return [
      ["readings", exact(set.judged.length)],
      ["mean, mL", mean(set.judged)],
      ...scatterRows(set),
      ...testRows(set),
      ["verdict", verdict(set, found)],
      ...recordRows(set, found),
    ];
  },
  {
    result: "label and figure, row by row",
    equation: "mean, s, s / mean, range, t s / sqrt(n), G, p of {readings}",
    notes: [
      "With sampleMasses every reading is first brought to the mean sample mass: (reading − mean blank) × mean mass ÷ own mass.",
      "G and its p are the plain test, as published. G with graduation is what is compared with the critical G.",
      "The interval counts the scatter alone: see BUDGET for graduation, weighing and titrant.",
    ],
    example: {
      formula: "=TITRE.SPREAD({2.4,2.5,2.45})",
      gives: [
        ["readings", 3],
        ["mean, mL", 2.45],
        ["standard deviation, mL", 0.05],
        ["relative standard deviation, %", 2.0408163265306123],
        ["range, mL", 0.1],
        ["half-width of the 95 % interval, scatter alone, mL", 0.124206885587517],
        ["reading tested, mL", 2.4],
        ["G: how far off, in standard deviations", 1],
        ["G with graduation: with the step that was read", 0.9258200997725514],
        ["critical G: above it a reading is suspect", 1.15430485134404],
        ["p, two-sided: how often chance alone goes so far", 1],
        ["verdict", "The three agree within 0.10 mL: use 2.450 mL."],
        ["farthest from the mean, mL", "no usual scatter given"],
        ["explained by the usual scatter, mL", "no usual scatter given"],
        ["degrees of freedom of the usual scatter", "no usual scatter given"],
      ],
    },
    sources: ["grubbs", "gum"],
  },
);

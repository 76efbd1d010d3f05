import { sources } from "../../core/reference/sources";
import type { Result, ResultTable } from "../answer";
import { worksheetFunction } from "../define";
import { type Check, run } from "./checks/check";
import { fuelChecks } from "./checks/fuel";
import { statisticsChecks } from "./checks/statistics";
import { titrationChecks } from "./checks/titration";
import { uncertaintyChecks } from "./checks/uncertainty";

/** Published and exact figures, titration first. */
export const checks: readonly Check[] = [
  ...titrationChecks,
  ...uncertaintyChecks,
  ...statisticsChecks,
  ...fuelChecks,
];

const header: Result[] = ["check", "source", "expected", "computed here", "agrees"];

const row = (check: Check): Result[] => {
  const { expected, ours, agrees } = run(check);
  const source = sources[check.source] + (check.where ? `: ${check.where}` : "");
  return [check.check, source, expected, ours, agrees];
};

const table = (): ResultTable => [header, ...checks.map(row)];

export const CHECKS = worksheetFunction(
  "CHECKS",
  "Published and exact figures beside what this workbook computes, with their sources.",
  {},
  table,
  {
    result: "check, source, expected, computed here, agrees",
    equation: "expected = computed here",
    notes: [
      "Agrees means that the figure computed here rounds to the printed one, or lies within the difference the row states.",
      "Computed anew by the functions in your own workbook each time: nothing is copied from a list of answers.",
    ],
    // The first rows only: the whole list grows with every check that is added.
    example: {
      formula: "=TITRE.CHECKS()",
      gives: [
        ["check", "source", "expected", "computed here", "agrees"],
        ["FFA from 10.00 mL of 0.1 mol/L on 28.2 g, %", sources.aocsCa5a, 1, 1, true],
      ],
    },
    sources: [
      "iso660",
      "aocsCa5a",
      "en14104",
      "quam",
      "gum",
      "nistHandbook",
      "nistStrd",
      "aocsCc17",
      "jcgm106",
    ],
  },
);

/** Checks of the statistics: outliers, Student t, and sums that are hard on rounding. */
import { exact } from "../../../core/exact/exact";
import { deviations, sampleDeviation } from "../../../core/replicates/deviations";
import { dixonRatio } from "../../../core/replicates/dixon";
import { farthest, grubbsCritical } from "../../../core/replicates/grubbs";
import { studentT } from "../../../core/replicates/student-t";
import type { Check } from "./check";

/** Uranium isotope ratios, e-Handbook 1.3.5.17.1 (Tietjen and Moore 1972). */
const uranium = ["199.31", "199.53", "200.19", "200.82", "201.92", "201.95", "202.18", "245.57"];
const strengths = ["568", "570", "570", "570", "572", "572", "572", "578", "584", "596"];
const textbook = ["0.189", "0.167", "0.187", "0.183", "0.186", "0.182", "0.181", "0.184", "0.181"];

const plainG = (values: readonly string[]) => () =>
  farthest(deviations(values.map(exact)), 0).plain;

/** StRD NumAcc4 by its rule: one 10000000.2, then 500 pairs a tenth below and above. */
const numAcc4 = [
  exact("10000000.2"),
  ...Array.from({ length: 1000 }, (_, place) => exact(place % 2 ? "10000000.3" : "10000000.1")),
];

export const statisticsChecks: readonly Check[] = [
  {
    check: "standard deviation of the eight uranium ratios",
    source: "nistHandbook",
    expected: "15.85",
    compute: () => sampleDeviation(uranium.map(exact)),
  },
  {
    check: "G of 245.57 among them (printed cut off, within 0.01 %)",
    source: "nistHandbook",
    expected: "2.4687",
    within: 1e-4,
    compute: plainG(uranium),
  },
  {
    check: "critical G for eight, one-sided 5 %",
    source: "nistHandbook",
    expected: "2.032",
    compute: () => grubbsCritical(8, 0.1),
  },
  {
    check: "T of the ten breaking strengths",
    source: "astmE178",
    expected: "2.39",
    compute: plainG(strengths),
  },
  {
    check: "critical G for ten, 5 %",
    source: "iso5725Table",
    expected: "2.290",
    compute: () => grubbsCritical(10, 0.05),
  },
  {
    check: "critical G for ten, 1 %",
    source: "iso5725Table",
    expected: "2.482",
    compute: () => grubbsCritical(10, 0.01),
  },
  {
    check: "Dixon's Q of ten textbook values",
    source: "dixon",
    expected: "0.455",
    compute: () => dixonRatio([...textbook, "0.177"].map(exact)).toNumber(),
  },
  {
    check: "Student t, 95 %, 2 degrees of freedom",
    source: "studentTable",
    expected: "4.30",
    compute: () => studentT(0.05, 2),
  },
  {
    check: "Student t, 95 %, 10 degrees of freedom",
    source: "studentTable",
    expected: "2.23",
    compute: () => studentT(0.05, 10),
  },
  {
    check: "standard deviation of NumAcc4, 1001 values (within 1e-9)",
    source: "nistStrd",
    where: "NumAcc4, higher difficulty",
    expected: "0.1",
    within: 1e-9,
    compute: () => sampleDeviation(numAcc4),
  },
];

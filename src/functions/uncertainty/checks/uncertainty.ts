/** Checks of the uncertainties: worked examples of QUAM and the GUM. */
import { exact } from "../../../core/exact/exact";
import { quantity } from "../../../core/quantity/quantity";
import { sampleDeviation } from "../../../core/replicates/deviations";
import { studentT } from "../../../core/replicates/student-t";
import { molarityFromPhthalate } from "../../../core/titration/titrant";
import { combined, effectiveFreedom } from "../../../core/uncertainty/combine";
import {
  fromInterval95,
  fromLimits,
  fromTriangle,
  ofMean,
} from "../../../core/uncertainty/standard-uncertainty";
import type { Check } from "./check";

/** QUAM A2: sodium hydroxide against 0.3888 g of KHP, 18.64 mL. */
const strength = () =>
  molarityFromPhthalate(
    quantity("g", "0.3888"),
    quantity("mL", "18.64"),
    quantity("%", "100"),
  ).toNumber();

/** Relative standard uncertainties of example A2, in its order. */
const relativeA2 = (repeatability: number): number[] => [
  repeatability,
  (Math.SQRT2 * fromLimits(0.00015)) / 0.3888,
  fromLimits(0.0005),
  0.0038 / 204.2212,
  combined([fromTriangle(0.03), fromInterval95(19 * 2.1e-4 * 3)]) / 18.64,
];

/** A burette or pipette of example A3: calibration, and 4 C of room temperature. */
const volumeA3 = (calibration: number, nominal: number, delivered: number): number =>
  combined([fromTriangle(calibration), fromLimits(nominal * 2.1e-4 * 4)]) / delivered;

/** Example A3: hydrochloric acid by way of KHP and sodium hydroxide, mol/L 0.10139. */
const uncertaintyA3 = (repeatability: number) => (): number =>
  0.10139 *
  combined([
    ...relativeA2(repeatability).slice(0, -1),
    volumeA3(0.03, 15, 14.89),
    volumeA3(0.03, 19, 18.64),
    volumeA3(0.02, 15, 15),
  ]);

/** GUM 4.4.3: twenty temperatures, C. */
const temperatures = (
  "96.90 98.18 98.25 98.61 99.03 99.49 99.56 99.74 99.89 100.07 " +
  "100.33 100.42 100.68 100.95 101.11 101.20 101.57 101.84 102.36 102.72"
)
  .split(" ")
  .map(exact);

/** GUM H.1: the end gauge, nm. */
const endGauge = [
  { uncertainty: 25, freedom: 18 },
  { uncertainty: 9.7, freedom: 25.6 },
  { uncertainty: 2.9, freedom: 50 },
  { uncertainty: 16.6, freedom: 2 },
];
const gaugeFreedom = (): number => Math.floor(effectiveFreedom(endGauge));

export const uncertaintyChecks: readonly Check[] = [
  {
    check: "strength of sodium hydroxide against KHP, mol/L",
    source: "quam",
    where: "example A2",
    expected: "0.10214",
    compute: strength,
  },
  {
    check: "its standard uncertainty, mol/L",
    source: "quam",
    where: "example A2",
    expected: "0.00010",
    compute: () => strength() * combined(relativeA2(0.0005)),
  },
  {
    check: "standard uncertainty of hydrochloric acid, one titration, mol/L",
    source: "quam",
    where: "example A3",
    expected: "0.00018",
    compute: uncertaintyA3(0.001),
  },
  {
    check: "the same, mean of three, mol/L",
    source: "quam",
    where: "example A3",
    expected: "0.00016",
    compute: uncertaintyA3(ofMean(0.001, 3)),
  },
  {
    check: "standard deviation of twenty temperatures, C",
    source: "gum",
    where: "4.4.3",
    expected: "1.49",
    compute: () => sampleDeviation(temperatures),
  },
  {
    check: "standard uncertainty of their mean, C",
    source: "gum",
    where: "4.4.3",
    expected: "0.33",
    compute: () => ofMean(sampleDeviation(temperatures), temperatures.length),
  },
  {
    check: "limits of 96 and 104 C, rectangular, C",
    source: "gum",
    where: "4.4.5",
    expected: "2.3",
    compute: () => fromLimits(4),
  },
  {
    check: "the same, triangular, C",
    source: "gum",
    where: "4.4.6",
    expected: "1.6",
    compute: () => fromTriangle(4),
  },
  {
    check: "degrees of freedom of the end gauge, cut off",
    source: "gum",
    where: "H.1.6",
    expected: "16",
    compute: gaugeFreedom,
  },
  {
    check: "its coverage factor, 99 %",
    source: "gum",
    where: "H.1.6",
    expected: "2.92",
    compute: () => studentT(0.01, gaugeFreedom()),
  },
];

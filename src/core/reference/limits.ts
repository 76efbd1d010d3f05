/**
 * What each argument may be. Limits are data: the argument readers, the help pages, the README and
 * the property tests all read this table. No range includes 0, since 0 means "not filled in".
 */
import { type Exact, exact } from "../exact/exact";
import type { Unit } from "../quantity/quantity";

export interface Limits<U extends Unit = Unit> {
  readonly unit: U;
  /** The lowest value, and whether it is itself allowed. */
  readonly from: string;
  readonly fromIncluded: boolean;
  /** The highest value, itself allowed. */
  readonly to: string;
  /** What a value below or above usually is a slip for. */
  readonly ifBelow?: string;
  readonly ifAbove?: string;
}

const above = <U extends Unit>(
  unit: U,
  from: string,
  to: string,
  hints: Pick<Limits, "ifBelow" | "ifAbove"> = {},
): Limits<U> => ({ unit, from, fromIncluded: false, to, ...hints });

const between = <U extends Unit>(
  unit: U,
  from: string,
  to: string,
  hints: Pick<Limits, "ifBelow" | "ifAbove"> = {},
): Limits<U> => ({ unit, from, fromIncluded: true, to, ...hints });

/** 31 December 9999: the last day that spreadsheets have a number for. */
export const lastDay = 2_958_465;

export const limits = {
  reading: above("mL", "0", "1000"),
  molarity: above("mol/L", "0", "2", {
    ifAbove: "is it g/L? 1 g/L of KOH is 0.0178 mol/L; MOLARITY converts",
  }),
  sampleMass: above("g", "0", "1000"),
  sampleVolume: above("mL", "0", "1000"),
  titrantStrength: above("g/L", "0", "200"),
  volume: above("L", "0", "100"),
  titrantMass: above("g", "0", "20000"),
  phthalateMass: above("g", "0", "20"),
  purity: above("%", "50", "100", { ifBelow: "purity is in percent: write 99.9, not 0.999" }),
  assay: above("%", "1", "100", { ifBelow: "assay is in percent: write 90, not 0.90" }),
  acidValue: above("mg KOH/g", "0", "400"),
  ffaPercent: above("%", "0", "100"),
  oilMass: above("kg", "0", "1000000"),
  baseCharge: above("%", "0", "3", {
    ifAbove: "is it g/L? 3.5 g/L is 0.38 %: CHARGEPERCENT converts",
  }),
  chargeGramsPerLitre: above("g/L", "0", "30"),
  molarRatio: between("mol/mol", "3", "15", {
    ifAbove: "is it % by volume? MOLARRATIO converts",
  }),
  volumePercent: above("%", "0", "60"),
  temperature: between("C", "-20", "100"),
  step: above("mL", "0", "10"),
  massStep: above("g", "0", "10"),
  concordanceLimit: above("mL", "0", "10"),
  standardDeviation: above("mL", "0", "10"),
  halfWidth: above("mL", "0", "10"),
  usualFreedom: between("fraction", "1", "1000", {
    ifAbove: "more makes no difference: write 1000",
  }),
  /** A day as the spreadsheet counts them. */
  day: above("fraction", "0", String(lastDay)),
  controlValue: above("fraction", "0", "1000000"),
  controlStep: above("fraction", "0", "10"),
  baseline: between("fraction", "2", "1000"),
  weight: above("fraction", "0", "1"),
  amount: above("fraction", "0", "1000000"),
  lotMass: above("kg", "0", "1000000"),
  confidence: between("%", "50", "99.9", {
    ifBelow: "confidence is in percent: write 95, not 0.95",
  }),
  plusMinusPercent: above("%", "0", "20"),
  waterPercent: above("%", "0", "100"),
  /** Soap, free base or metal in fuel: no more than there is fuel. */
  inFuel: above("mg/kg", "0", "1000000"),
  glycerolPercent: above("%", "0", "100"),
  /** A measured figure, its ± and its limit, all in one unit. */
  measured: above("fraction", "0", "1000000"),
  dishMass: above("g", "0", "10000"),
  pressureRise: above("kPa", "0", "1000", { ifAbove: "is it in Pa or mbar? 1 kPa is 10 mbar" }),
  lyeMass: above("g", "0", "1000000"),
  methanolVolume: above("L", "0", "1000000"),
  methanolMass: above("kg", "0", "1000000"),
  temperatureRise: above("C", "0", "100"),
  /** pH, or mV of either sign. */
  probeReading: between("fraction", "-2000", "2000"),
  ffaLimit: above("%", "0", "30"),
  fattyAcidMass: between("g/mol", "100", "500", {
    ifBelow: "28.2 is the AOCS factor for oleic: write 282",
  }),
  oilDensity: between("kg/L", "0.5", "1.2"),
  titrantExpansion: above("1/C", "0", "0.002"),
} as const satisfies Record<string, Limits>;

/** "above 0, up to 1000 mL", "from 3 to 15". */
export function allowedWords(limit: Limits): string {
  const unit = unitWords(limit.unit);
  const edge = limit.fromIncluded ? `from ${limit.from} to ` : `above ${limit.from}, up to `;
  return `${edge}${limit.to}${unit ? ` ${unit}` : ""}`;
}

/** A pure ratio carries no unit when shown. */
export const unitWords = (unit: Unit): string =>
  unit === "mol/mol" || unit === "fraction" ? "" : unit === "1/C" ? "per C" : unit;

/** Which way a value misses its limits, if it does. Exact: no slack. */
export function misses(value: Exact, limit: Limits): "below" | "above" | undefined {
  const from = exact(limit.from);
  if (limit.fromIncluded ? value.lt(from) : value.lte(from)) return "below";
  return value.gt(exact(limit.to)) ? "above" : undefined;
}

/**
 * What standards ask of the finished fuel, to be shown as context alone: feedstock is not fuel, and an
 * edition that is in force may ask for something else. Nothing here decides anything.
 */
import { exact } from "../exact/exact";

export interface FuelLimit {
  readonly property: string;
  /** ASTM D6751, as its 2009 summary table gives it. */
  readonly astm: string;
  /** EN 14214:2012+A1:2014. */
  readonly en: string;
}

export const fuelEditions = { astm: "ASTM D6751 (2009)", en: "EN 14214:2012+A1:2014" } as const;

/** The figures a fuel of one's own is held against, as both standards have them. */
export const fuelMost = {
  /** mg KOH/g. */
  acid: exact("0.50"),
  /** mg/kg of sodium and potassium together. */
  metals: exact("5"),
  /** % of the mass: 500 mg/kg of EN 14214; ASTM D6751 counts it by volume, with sediment. */
  water: exact("0.05"),
} as const;

const metalsAtMost = fuelMost.metals.toString();

const row = (property: string, astm: string, en: string): FuelLimit => ({ property, astm, en });

export const fuelLimits: readonly FuelLimit[] = [
  row("Acid value, mg KOH/g", "0.50", "0.50"),
  row("Sodium and potassium, mg/kg", metalsAtMost, metalsAtMost),
  row("Methanol, % of the mass", "0.2, or flash point 130 C and above", "0.20"),
  row("Water", "0.05 % by volume, with sediment", "500 mg/kg"),
  row("Ester content, % of the mass, at least", "not asked for", "96.5"),
  row("Free glycerol, % of the mass", "0.020", "0.02"),
  row("Total glycerol, % of the mass", "0.240", "0.25 (commonly cited)"),
  row("Flash point, C, at least", "93", "101"),
];

/** Neither limits soap by name; the metals do. */
export const aboutSoap = `Neither names soap; ${metalsAtMost} mg/kg of sodium is 66 mg/kg of sodium oleate, of potassium 41 mg/kg of potassium oleate.`;

/**
 * Oils and fats: density and the molar mass of their triglyceride (= 3 x 56100 / saponification
 * value). Mid-range Codex values (source: codex, commonly cited). No standard covers used cooking
 * oil: measure it. Density falls 0.00066 kg/L for each degree (source: noureddini, commonly cited).
 */
import {
  type Celsius,
  type GramPerMole,
  type KilogramPerLitre,
  quantity,
} from "../quantity/quantity";
import { triolein } from "./compounds";

export interface Oil {
  readonly name: string;
  readonly alsoCalled: readonly string[];
  readonly density: KilogramPerLitre;
  /** The temperature the density holds at. */
  readonly densityAt: Celsius;
  /** Below this it is solid and a volume of it says nothing. Undefined: no lowest is known. */
  readonly liquidFrom: Celsius | undefined;
  readonly triglyceride: GramPerMole;
}

export const densitySlopePerCelsius = quantity("kg/L", "0.00066");
export const usualTemperature = quantity("C", "20");

const row = (
  name: string,
  alsoCalled: readonly string[],
  density: string,
  densityAt: string,
  liquidFrom: string,
  triglyceride: string,
): Oil => ({
  name,
  alsoCalled,
  density: quantity("kg/L", density),
  densityAt: quantity("C", densityAt),
  liquidFrom: quantity("C", liquidFrom),
  triglyceride: quantity("g/mol", triglyceride),
});

export const usedCookingOil = "used cooking oil";

//      name               also        kg/L      at    from  g/mol
// prettier-ignore
export const oils: readonly Oil[] = [
  row("canola",           ["rapeseed"], "0.9154", "20", "0",  "897.60"),
  row("soybean",          [],           "0.9203", "20", "0",  "876.56"),
  row("sunflower",        [],           "0.9189", "20", "0",  "881.15"),
  row("maize",            ["corn"],     "0.9194", "20", "0",  "881.15"),
  row("palm",             [],           "0.9000", "40", "35", "843.61"),
  row("coconut",          [],           "0.9129", "40", "25", "656.14"),
  row("lard",             [],           "0.8984", "40", "40", "852.15"),
  row("tallow",           [],           "0.8974", "40", "45", "858.67"),
  row(usedCookingOil,     [],           "0.9150", "20", "0",  "867.53"),
];

/** An oil known only by its density at 20 C: its triglyceride is taken as triolein. */
export const oilOfDensity = (density: KilogramPerLitre): Oil => ({
  name: "the oil",
  alsoCalled: [],
  density,
  densityAt: usualTemperature,
  liquidFrom: undefined,
  triglyceride: triolein,
});

/** What an oil that is not named is taken to be. */
export const oilNotNamed = oilOfDensity(quantity("kg/L", "0.915"));

/** The oil a word names, or undefined. Case and outer spaces are ignored. */
export const oilNamed = (word: string): Oil | undefined => {
  const wanted = word.trim().toLowerCase();
  return oils.find((oil) => oil.name === wanted || oil.alsoCalled.includes(wanted));
};

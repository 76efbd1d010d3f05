/** The units an amount of oil may be given in. Factors are exact by definition. */
import type { Exact } from "../exact/exact";
import { exact, thousand } from "../exact/exact";

export interface AmountUnit {
  readonly name: string;
  readonly alsoCalled: readonly string[];
  /** Shown after a figure, so that no gallon is ever just a gallon. */
  readonly shown: string;
  readonly measures: "volume" | "mass";
  /** What a logbook's heading that names it was read to say: "imp gal". */
  readonly inHeadings: string;
  /** Where an amount of oil is asked for in the pane; left out where it is not offered. */
  readonly words?: string;
  /** Litres in one, or kilograms in one. */
  readonly factor: Exact;
}

/** 231 cubic inches of 2.54 cm (source: internationalYard). */
export const litresInUsGallon = exact("3.785411784");
/** Source: imperialGallon. */
export const litresInImperialGallon = exact("4.54609");
/** Source: internationalYard. */
export const kilogramsInPound = exact("0.45359237");

type More = Partial<Pick<AmountUnit, "words" | "inHeadings">>;

const unitOf =
  (measures: AmountUnit["measures"]) =>
  (
    name: string,
    alsoCalled: readonly string[],
    shown: string,
    factor: Exact,
    more: More = {},
  ): AmountUnit => ({ name, alsoCalled, shown, measures, factor, inHeadings: shown, ...more });
const volume = unitOf("volume");
const mass = unitOf("mass");

export const amountUnits: readonly AmountUnit[] = [
  volume("l", ["litre", "liter"], "L", exact(1), { words: "Litres" }),
  volume("ml", [], "mL", exact(1).div(thousand)),
  volume("us_gal", [], "US gal", litresInUsGallon, { words: "US gallons (3.785 L)" }),
  volume("uk_gal", [], "imperial gal", litresInImperialGallon, {
    words: "Imperial gallons (4.546 L)",
    inHeadings: "imp gal",
  }),
  mass("g", [], "g", exact(1).div(thousand)),
  mass("kg", [], "kg", exact(1), { words: "Kilograms" }),
  mass("lb", ["lbm"], "lb", kilogramsInPound, { words: "Pounds" }),
];

const freezing = 32;
const degreesInFive = 9;
/** By definition: 0 °C is 32 °F, and five of the one are nine of the other. */
export const celsiusOf = (fahrenheit: Exact): Exact =>
  fahrenheit.minus(freezing).times(5).div(degreesInFive);
export const fahrenheitOf = (celsius: Exact): Exact =>
  celsius.times(degreesInFive).div(5).plus(freezing);

/** Those that an amount of oil is asked for in, in the order they are offered. */
export const offeredUnits = ["l", "kg", "us_gal", "uk_gal", "lb"] as const;

const orList = (names: readonly string[]): string =>
  `${names.slice(0, -1).join(", ")} or ${names.at(-1) ?? ""}`;

/** "l, ml, us_gal, uk_gal, g, kg or lb" */
export const amountUnitNames = orList(amountUnits.map(({ name }) => name));
export const offeredUnitNames = orList(offeredUnits);

/** Words that name two different volumes, and so are refused. */
const bareGallons = ["gal", "gallon"];

export const isBareGallon = (word: string): boolean =>
  bareGallons.includes(word.trim().toLowerCase());

/** The unit a word names, or undefined. Case and outer spaces are ignored. */
export const amountUnitNamed = (word: string): AmountUnit | undefined => {
  const wanted = word.trim().toLowerCase();
  return amountUnits.find((unit) => unit.name === wanted || unit.alsoCalled.includes(wanted));
};

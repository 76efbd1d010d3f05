/**
 * Measures that logbooks count in, beside the units of an amount. What a pound, a gallon and their parts
 * are is law; what a drop or a cup holds is each maker's own, and is asked.
 */
import type { SourceId } from "../reference/sources";
import { type Exact, thousand } from "../exact/exact";
import { amountUnits, kilogramsInPound, litresInImperialGallon, litresInUsGallon } from "./units";

/** g or mL in one; undefined: nobody can know but its maker. */
export interface Measure {
  readonly name: string;
  readonly measures: "mass" | "volume" | "either";
  readonly factor: Exact | undefined;
  readonly source: SourceId;
}

const gramsInPound = kilogramsInPound.times(thousand);
const usGallon = litresInUsGallon.times(thousand);
const imperialGallon = litresInImperialGallon.times(thousand);

type Row = readonly [
  name: string,
  measures: Measure["measures"],
  factor: Exact | undefined,
  source: SourceId,
];

// prettier-ignore
const further: readonly Row[] = [
  // a pound is 16 ounces and 7000 grains
  ["oz", "mass", gramsInPound.div(16), "internationalYard"],
  ["grain", "mass", gramsInPound.div(7000), "internationalYard"],
  // a US gallon is 4 quarts, 8 pints, 128 fluid ounces; an imperial one 4, 8 and 160
  ["US quart", "volume", usGallon.div(4), "internationalYard"],
  ["US pint", "volume", usGallon.div(8), "internationalYard"],
  ["US fl oz", "volume", usGallon.div(128), "internationalYard"],
  ["imp quart", "volume", imperialGallon.div(4), "imperialGallon"],
  ["imp pint", "volume", imperialGallon.div(8), "imperialGallon"],
  ["imp fl oz", "volume", imperialGallon.div(160), "imperialGallon"],
  ["drop", "volume", undefined, "practice"],
  ["cup", "either", undefined, "practice"],
  ["tablespoon", "either", undefined, "practice"],
  ["teaspoon", "either", undefined, "practice"],
];

const gramsOrMillilitres: readonly Measure[] = amountUnits.map(
  ({ inHeadings, measures, factor }) => ({
    name: inHeadings,
    measures,
    factor: factor.times(thousand),
    source: "definition",
  }),
);

export const measures: readonly Measure[] = [
  ...gramsOrMillilitres,
  ...further.map(([name, kind, factor, source]) => ({ name, measures: kind, factor, source })),
];

const byName = new Map(measures.map((each) => [each.name, each]));

export const measureNamed = (name: string | undefined): Measure | undefined =>
  name === undefined ? undefined : byName.get(name);

export const nations = ["US", "imp"] as const;
export type Nation = (typeof nations)[number];

/** One word for two volumes: a gallon of either nation. */
export const isBare = (name: string | undefined): name is string =>
  name !== undefined && byName.has(`US ${name}`);

/** Each maker's own: a drop, a cup. */
export const isSized = (name: string | undefined): name is string => {
  const measure = measureNamed(name);
  return measure !== undefined && measure.factor === undefined;
};

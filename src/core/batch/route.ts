import { exact } from "../exact/exact";
import { atLeast, atMost } from "../exact/compare";
import { shown, shownBelow } from "../exact/rounding";
import { type AcidValue, type Percent, quantity } from "../quantity/quantity";
import { ffaAsOleic } from "../titration/free-fatty-acid";

export interface Band {
  /** Lower edge, % FFA as oleic, itself in the band; the acid limit stands where it is undefined. */
  readonly from: Percent | undefined;
  readonly advice: string;
}

/** From here on a base batch costs yield. */
const costsYieldFrom = quantity("%", "3");

/**
 * What a lot of a given acidity can do. Bands: Freedman 1984 and Ma 1998 below 0.5 %, a review of
 * 2013 for 3 %, 5 % commonly cited, the rest common practice, no source. In order of severity.
 */
export const bands: readonly Band[] = [
  { from: quantity("%", "0"), advice: "lye only, as for refined oil" },
  { from: quantity("%", "0.5"), advice: "lye only, the dose counts the acid" },
  {
    from: quantity("%", "1"),
    advice: "lye only, the dose counts the acid; it makes more soap, so wash and settle longer",
  },
  {
    from: costsYieldFrom,
    advice: "lye alone costs yield and may settle badly; blend it or pretreat it if you can",
  },
  {
    // the acid that is allowed: 5 % where nobody says another (reference/defaults.ts, usual.limitFfa)
    from: undefined,
    advice:
      "lye alone will not do: blend it down, pretreat it with acid, or pass it to someone who can treat it",
  },
  { from: quantity("%", "15"), advice: "two acid steps, or hand it to a specialist" },
];

/** Above this share of water a base batch suffers: Ma 1998. */
export const mostWater = exact("0.06");

/**
 * The band a lot falls in: the most severe one whose lower edge it reaches.
 * @param limitFfa percent FFA as oleic above which no dose is given
 */
function bandOf(
  ffa: Percent,
  limitFfa: Percent,
): { band: Band; from: Percent; to: Percent | undefined } {
  const edges = bands.map((band) => ({ band, from: band.from ?? limitFfa }));
  const reached = edges.filter((edge) => atLeast(ffa, edge.from));
  // the first band begins at 0: it is always reached
  const found = reached[reached.length - 1] as (typeof edges)[number];
  const above = edges.map((edge) => edge.from).filter((from) => !atLeast(ffa, from));
  const to = above.reduce<Percent | undefined>(
    (low, from) => (low === undefined || from.lt(low) ? from : low),
    undefined,
  );
  return { ...found, to };
}

/** The parts of the sentence, around figures as text: the plain-formula twin says them too. */
export const routeWords = {
  sentence: (ffa: string, band: string, advice: string, water: string): string =>
    `FFA ${ffa} % (${band}): ${advice}; ${water}.`,
  under: (to: string): string => `under ${to} %`,
  between: (from: string, to: string): string => `${from} to under ${to} %`,
  orMore: (from: string): string => `${from} % or more`,
  notMeasured: "water not measured",
  wet: (water: string): string =>
    `water ${water} % is above ${shown(mostWater)} %: dry the oil first`,
  dry: (water: string): string => `water ${water} % is low enough`,
};

function bandWords(from: Percent, to: Percent | undefined): string {
  if (to === undefined) return routeWords.orMore(shown(from));
  return from.isZero() ? routeWords.under(shown(to)) : routeWords.between(shown(from), shown(to));
}

const waterWords = (water: Percent | undefined): string => {
  if (water === undefined) return routeWords.notMeasured;
  return atMost(water, mostWater) ? routeWords.dry(shown(water)) : routeWords.wet(shown(water));
};

/**
 * Advice in one sentence, naming the band of % FFA as oleic. It informs and does not decide.
 * @example route(AV 1.9894) // "FFA 1 % (1 to under 3 %): lye only ...; water not measured."
 */
export function route(value: AcidValue, water: Percent | undefined, limitFfa: Percent): string {
  const ffa = ffaAsOleic(value);
  const { band, from, to } = bandOf(ffa, limitFfa);
  const figure = to === undefined ? shown(ffa.toSignificantDigits(3)) : shownBelow(ffa, to);
  return routeWords.sentence(figure, bandWords(from, to), band.advice, waterWords(water));
}

/**
 * Should this lot be treated with acid before a base batch? As the route's sentence has it.
 * @returns "first" at the limit and above; "if you can" in the band below it
 */
export function pretreatmentAdvised(
  value: AcidValue,
  limitFfa: Percent,
): "no" | "if you can" | "first" {
  const ffa = ffaAsOleic(value);
  if (atLeast(ffa, limitFfa)) return "first";
  return atLeast(ffa, costsYieldFrom) ? "if you can" : "no";
}

/**
 * The verdict on the replicates, in one sentence. Each names the reading, the figure and what to do
 * next. A reading is flagged, never dropped: leaving it out is the user's act, with a reason noted.
 * Choosing the best two of three is never offered: it is worse than keeping all three.
 */
import { computed, type Exact } from "../exact/exact";
import { mean } from "../exact/lists";
import { shown } from "../exact/shown";
import { outlierTest, type ReplicateSet, type Tested } from "./outlier-test";
import { scatterOf } from "./spread";

export const mostPlaces = 6;
export const placesOfG = 4;
/** Digits of a double that its rounding errors leave alone. */
const digitsOfDouble = 12;

/** As many decimals as were typed, or as the step has: 2.3 read to 0.01 is 2.30. */
const placesOf = (set: ReplicateSet): number =>
  Math.min(mostPlaces, Math.max(...[set.step, ...set.readings].map((x) => x.decimalPlaces())));

/** A reading as its owner knows it. One computed in the sheet may have many decimals. */
const named = (reading: Exact, places: number): string =>
  reading.decimalPlaces() > mostPlaces ? shown(reading) : reading.toFixed(places);

const fourth = "a fourth titre settles more than any test";

/**
 * The sentences, around figures as text: the plain-formula twin says them too. `forMass` is "" where
 * one mass served all.
 */
export const verdictWords = {
  forMasses: " for their masses",
  forMass: " for its mass",
  one: (reading: string): string =>
    `One reading, ${reading} mL: nothing to compare it with; titrate at least twice more.`,
  bothAre: (reading: string): string =>
    `Both readings are ${reading} mL: two that agree prove little; titrate a third.`,
  two: (first: string, second: string, apart: string, forMasses: string): string =>
    `Two readings, ${first} and ${second} mL, ${apart} mL apart${forMasses}: no test can say which is off; titrate a third and a fourth.`,
  allThree: (mean: string, forMasses: string): string =>
    `All 3 readings are ${mean} mL${forMasses}: no spread to test; ${fourth}.`,
  all: (count: string, mean: string, forMasses: string): string =>
    `All ${count} readings are ${mean} mL${forMasses}: no spread to test; use the mean.`,
  figure: (g: string, limit: string, confidence: string): string =>
    `G ${g}, limit ${limit} at ${confidence} %`,
  farthestOfThree: (reading: string, forMass: string, figure: string): string =>
    `${reading} mL lies farthest out${forMass} (${figure}): keep all three; they cannot settle it, and ${fourth}.`,
  farthest: (reading: string, forMass: string, figure: string, count: string, mean: string) =>
    `${reading} mL lies farthest out${forMass} (${figure}), which chance explains: all ${count} agree, use their mean, ${mean} mL.`,
  suspectOfThree: (reading: string, forMass: string, figure: string): string =>
    `${reading} mL is suspect${forMass} (${figure}): look for a cause and keep it for now; ${fourth}.`,
  suspect: (reading: string, forMass: string, figure: string, mean: string, without: string) =>
    `${reading} mL is suspect${forMass} (${figure}): look for a cause, then titrate again, or omit it with the reason noted (mean ${mean} mL with it, ${without} without).`,
};

function untested(set: ReplicateSet): string {
  const places = placesOf(set);
  const [first = "", second = ""] = set.readings.map((reading) => named(reading, places));
  const count = set.readings.length;
  const forMasses = set.hasOwnMasses ? verdictWords.forMasses : "";
  if (count === 1) return verdictWords.one(first);
  if (count === 2) {
    if (first === second && !set.hasOwnMasses) return verdictWords.bothAre(first);
    const apart = scatterOf(set)?.range.toFixed(places) ?? "";
    return verdictWords.two(first, second, apart, forMasses);
  }
  const all = mean(set.judged).toFixed(places);
  return count === 3
    ? verdictWords.allThree(all, forMasses)
    : verdictWords.all(String(count), all, forMasses);
}

/** The mean of the judged readings but one. */
const meanWithout = (set: ReplicateSet, position: number): Exact =>
  mean(set.judged.filter((_, each) => each !== position));

function tested(set: ReplicateSet, found: Tested): string {
  const places = placesOf(set);
  // A double just under a half in the last place shown is that half: rounded away from zero.
  const shownG = (g: number): string =>
    computed(g).toSignificantDigits(digitsOfDouble).toFixed(placesOfG);
  const figure = verdictWords.figure(
    shownG(found.graduated),
    shownG(found.critical),
    set.confidence.toString(),
  );
  const reading = named(found.reading, places);
  const forMass = set.hasOwnMasses ? verdictWords.forMass : "";
  const count = set.readings.length;
  const withIt = mean(set.judged).toFixed(places + 1);
  if (!found.isSuspect) {
    return count === 3
      ? verdictWords.farthestOfThree(reading, forMass, figure)
      : verdictWords.farthest(reading, forMass, figure, String(count), withIt);
  }
  const without = meanWithout(set, found.position).toFixed(places + 1);
  return count === 3
    ? verdictWords.suspectOfThree(reading, forMass, figure)
    : verdictWords.suspect(reading, forMass, figure, withIt, without);
}

/** @returns one sentence of at most 200 characters */
export function verdict(set: ReplicateSet): string {
  const found = outlierTest(set);
  return found ? tested(set, found) : untested(set);
}

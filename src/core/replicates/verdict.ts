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

const mostPlaces = 6;
const placesOfG = 4;

/** As many decimals as were typed, or as the step has: 2.3 read to 0.01 is 2.30. */
const placesOf = (set: ReplicateSet): number =>
  Math.min(mostPlaces, Math.max(...[set.step, ...set.readings].map((x) => x.decimalPlaces())));

/** A reading as its owner knows it. One computed in the sheet may have many decimals. */
const named = (reading: Exact, places: number): string =>
  reading.decimalPlaces() > mostPlaces ? shown(reading) : reading.toFixed(places);

const fourth = "a fourth titre settles more than any test";

function untested(set: ReplicateSet): string {
  const places = placesOf(set);
  const [first, second] = set.readings.map((reading) => named(reading, places));
  const count = set.readings.length;
  if (count === 1) {
    return `One reading, ${first ?? ""} mL: nothing to compare it with; titrate at least twice more.`;
  }
  if (count === 2) {
    if (first === second && !set.hasOwnMasses) {
      return `Both readings are ${first ?? ""} mL: two that agree prove little; titrate a third.`;
    }
    const apart = scatterOf(set)?.range.toFixed(places) ?? "";
    return `Two readings, ${first ?? ""} and ${second ?? ""} mL, ${apart} mL apart${set.hasOwnMasses ? " for their masses" : ""}: no test can say which is off; titrate a third and a fourth.`;
  }
  const all = `All ${count} readings are ${mean(set.judged).toFixed(places)} mL${set.hasOwnMasses ? " for their masses" : ""}: no spread to test`;
  return count === 3 ? `${all}; ${fourth}.` : `${all}; use the mean.`;
}

/** The mean of the judged readings but one. */
const meanWithout = (set: ReplicateSet, position: number): Exact =>
  mean(set.judged.filter((_, each) => each !== position));

function tested(set: ReplicateSet, found: Tested): string {
  const places = placesOf(set);
  const shownG = (g: number): string => computed(g).toFixed(placesOfG);
  const figure = `G ${shownG(found.graduated)}, limit ${shownG(found.critical)} at ${set.confidence.toString()} %`;
  const reading = `${named(found.reading, places)} mL`;
  const forMass = set.hasOwnMasses ? " for its mass" : "";
  const isThree = set.readings.length === 3;
  const withIt = mean(set.judged).toFixed(places + 1);
  if (!found.isSuspect) {
    return isThree
      ? `${reading} lies farthest out${forMass} (${figure}): keep all three; they cannot settle it, and ${fourth}.`
      : `${reading} lies farthest out${forMass} (${figure}), which chance explains: all ${set.readings.length} agree, use their mean, ${withIt} mL.`;
  }
  const without = meanWithout(set, found.position).toFixed(places + 1);
  return isThree
    ? `${reading} is suspect${forMass} (${figure}): look for a cause and keep it for now; ${fourth}.`
    : `${reading} is suspect${forMass} (${figure}): look for a cause, then titrate again, or omit it with the reason noted (mean ${withIt} mL with it, ${without} without).`;
}

/** @returns one sentence of at most 200 characters */
export function verdict(set: ReplicateSet): string {
  const found = outlierTest(set);
  return found ? tested(set, found) : untested(set);
}

/**
 * The verdict on the replicates, in one sentence or two: what they are worth, and what to do next. A
 * reading is flagged, never dropped: leaving it out is the user's act, with a reason noted.
 */
import { computed, type Exact } from "../exact/exact";
import { mean, range } from "../exact/lists";
import { shown } from "../exact/rounding";
import { scattersMore } from "../record/pooled-scatter";
import { pooled, squaresOf } from "../record/usual-scatter";
import { type Judgement, judgement, without } from "./judgement";
import type { Lone } from "./lone-reading";
import { namedReading } from "./named-reading";
import type { ReplicateSet } from "./outlier-test";
import { countWord, slipWord, verdictWords as words } from "./verdict-words";

export const mostPlaces = 6;
/** Digits of a double that its rounding errors leave alone. */
const digitsOfDouble = 12;
/** Figures of the record are shown so. */
export const placesOfRecord = 3;
/** At a flag, so many must be left for the choice of leaving it out. */
export const fewestLeft = 3;

/** As many decimals as were typed, or as the step has: 2.3 read to 0.01 is 2.30. */
export const placesOf = (set: ReplicateSet): number =>
  Math.min(mostPlaces, Math.max(...[set.step, ...set.readings].map((x) => x.decimalPlaces())));

/** A reading as its owner knows it. One computed in the sheet may have many decimals. */
const named = (reading: Exact | undefined, places: number): string => {
  if (reading === undefined) return "";
  return reading.decimalPlaces() > mostPlaces ? shown(reading) : reading.toFixed(places);
};

/** What counts as agreement, in figures. */
const allowance = (set: ReplicateSet, { allowed }: Judgement): string =>
  set.usual
    ? words.byRecord(computed(allowed).toSignificantDigits(digitsOfDouble).toFixed(placesOfRecord))
    : words.byDrops(String(allowed));

function ofAgreement(set: ReplicateSet, places: number): string {
  const count = countWord(set.judged.length);
  const within = range(set.judged);
  if (set.hasOwnMasses) {
    const figure = within.toFixed(places);
    return Number(figure) === 0 ? words.agreeToTheDigit(count) : words.agreeOnMasses(count, figure);
  }
  if (within.isZero()) {
    const all = set.judged.length === 2 ? words.both : words.all(count);
    return words.equal(all, named(set.readings[0], places));
  }
  return words.agree(count, within.toFixed(places), mean(set.judged).toFixed(places + 1));
}

function ofLone(set: ReplicateSet, found: Judgement, lone: Lone, places: number): string {
  const others = without(set.judged, lone.place);
  const reading = named(set.readings[lone.place], places);
  const distance = lone.distance.toFixed(places);
  const isOptional = found.suspect !== undefined && others.length >= fewestLeft;
  const end = isOptional && !set.hasOwnMasses ? words.omit : words.end;
  return words.lone(reading, distance, countWord(others.length)) + end;
}

function ofApart(set: ReplicateSet, found: Judgement, places: number): string {
  const { suspect } = found;
  const others = without(set.judged, suspect);
  const [count, apart] = [countWord(others.length), range(others).toFixed(places)];
  const said =
    suspect === undefined
      ? words.apart(count, apart)
      : words.othersApart(named(set.readings[suspect], places), count, apart);
  return said + allowance(set, found);
}

/** The F test of the ±: then the record is left out of it. */
function ofToday({ judged, blanks, usual }: ReplicateSet): string {
  if (usual === undefined) return "";
  return scattersMore(pooled([squaresOf(judged), squaresOf(blanks)]), usual)
    ? ` ${words.more}`
    : "";
}

/**
 * @param found what the set was judged, where that is known already
 * @returns at most 200 characters
 */
export function verdict(set: ReplicateSet, found: Judgement = judgement(set)): string {
  const places = placesOf(set);
  if (set.judged.length === 1) return words.one(named(set.readings[0], places));
  if (found.marks.every((mark) => mark === "agrees"))
    return ofAgreement(set, places) + ofToday(set);
  const said = namedReading(set, found);
  if (said === undefined) return ofApart(set, found, places);
  if (said.by === "lone") return ofLone(set, found, said, places);
  const reading = named(set.readings[said.place], places);
  return words.slip(reading, slipWord(said.times), named(said.perhaps, places));
}

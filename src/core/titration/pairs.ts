import { type Exact } from "../exact/exact";
import type { Place } from "../problem/place";
import { type Outcome, problem } from "../problem/problem";

/** A place in a list that may not be filled in. Lists keep their gaps, since pairing is by position. */
export type Slot<Q> = Q | null;

/** How the two lists are called in a sentence, and where a position stands on the sheet. */
export interface PairWords {
  readonly first: string;
  readonly second: string;
  /** What mends a missing second: "give one mass for all". */
  readonly advice: string;
  readonly place: (position: number) => Place;
}

/**
 * Pair two lists by position. One filled in without the other is a problem; both empty is a gap.
 * @returns as many places as the longer list has, each a pair or null
 */
export function pairs<A extends Exact, B extends Exact>(
  first: readonly Slot<A>[],
  second: readonly Slot<B>[],
  words: PairWords,
): Outcome<Slot<readonly [A, B]>[]> {
  const paired: Slot<readonly [A, B]>[] = [];
  for (let position = 0; position < Math.max(first.length, second.length); position += 1) {
    const a = first[position] ?? null;
    const b = second[position] ?? null;
    if (a !== null && b !== null) paired.push([a, b]);
    else if (a === null && b === null) paired.push(null);
    else {
      const [filled, missing] =
        a === null ? [words.second, words.first] : [words.first, words.second];
      const { advice } = words;
      return problem({ code: "unpaired", filled, missing, place: words.place(position), advice });
    }
  }
  return paired;
}

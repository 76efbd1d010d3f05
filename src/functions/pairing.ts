/** Titres with their sample masses, as three functions take them. */
import { type Outcome, isProblem, problem } from "../core/problem/problem";
import type { Quantity, Unit } from "../core/quantity/quantity";
import type { Replicate } from "../core/titration/mean-acid-value";
import { pairs, type PairWords, type Slot } from "../core/titration/pairs";
import type { List } from "./arguments";
import { isLine, placeIn } from "./cells/grid";

/** One cell, which serves every partner. */
export const isOneCell = (list: Pick<List<Unit>, "rows" | "columns">): boolean =>
  list.rows * list.columns === 1;

/** Blocks must have the same shape, or a cell would silently meet the wrong partner. */
export function canPair(
  first: Pick<List<Unit>, "rows" | "columns">,
  second: Pick<List<Unit>, "rows" | "columns">,
  names: readonly [string, string],
): Outcome<true> {
  const sameShape = first.rows === second.rows && first.columns === second.columns;
  return sameShape || (isLine(first) && isLine(second))
    ? true
    : problem({ code: "shapes-differ", first: names[0], second: names[1] });
}

/** Two ranges pair cell by cell: rows and columns by position, blocks place by place. */
export function pairLists<A extends Unit, B extends Unit>(
  first: List<A>,
  second: List<B>,
  words: Omit<PairWords, "place">,
  names: readonly [string, string],
): Outcome<Slot<readonly [Quantity<A>, Quantity<B>]>[]> {
  const fit = canPair(first, second, names);
  if (isProblem(fit)) return fit;
  const longer = first.slots.length >= second.slots.length ? first : second;
  return pairs(first.slots, second.slots, {
    ...words,
    place: (position) => placeIn(longer, position),
  });
}

/** What was weighed, in a sentence and by the name of its argument. */
export interface Weighed {
  readonly called: string;
  readonly argument: string;
}

const ofOil: Weighed = { called: "sample mass", argument: "sampleMasses" };

/** Each titre with its own mass, gaps kept; a one-cell mass serves all. */
export function replicateSlots(
  titres: List<"mL">,
  masses: List<"g">,
  weighed = ofOil,
): Outcome<Slot<Replicate>[]> {
  const [mass] = masses.filled;
  if (isOneCell(masses) && mass !== undefined) {
    return titres.slots.map((titre) => (titre === null ? null : [titre, mass]));
  }
  return pairLists(
    titres,
    masses,
    {
      first: "titre",
      second: weighed.called,
      advice: "each needs the other, or give one mass for all",
    },
    ["titres", weighed.argument],
  );
}

/** The replicates that are there. */
export function replicates(
  titres: List<"mL">,
  masses: List<"g">,
  weighed?: Weighed,
): Outcome<Replicate[]> {
  const slots = replicateSlots(titres, masses, weighed);
  return isProblem(slots) ? slots : slots.filter((slot) => slot !== null);
}

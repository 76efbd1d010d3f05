/**
 * Which columns a person is to look at, before all others. It hangs on what was guessed and not on what has
 * been put right since, so that no column moves away while somebody is at it.
 */
import { hasBasis } from "../../adopt/recognising/basis";
import type { ColumnGuess } from "../../adopt/recognising/guess-columns";
import { sureFrom } from "../../adopt/recognising/sure";
import { needsUnit } from "../../adopt/recognising/measures/units-of-roles";
import { amountWordIn } from "../../adopt/recognising/written-units";
import type { FoundTable } from "./found-table";

/** So much speaks for some role that a column left alone may well be it. */
const mayBeFrom = 0.35;

interface PartedColumns {
  readonly toLook: readonly ColumnGuess[];
  readonly understood: readonly ColumnGuess[];
  /** No role of ours: a price, a colour. */
  readonly unused: readonly ColumnGuess[];
}

/** Does the row, or the word of the heading, say what the oil is counted in? */
const isSaidElsewhere = ({ role, heading }: ColumnGuess, all: readonly ColumnGuess[]): boolean =>
  role === "oilAmount" &&
  (all.some((each) => each.role === "amountUnit") || amountWordIn(heading) !== "");

/** What a column that is known still lacks: its unit, or what its grams of lye are. */
export function stillToSay(
  column: ColumnGuess,
  all: readonly ColumnGuess[],
): "unit" | "basis" | undefined {
  const { role, unit, basis } = column;
  if (needsUnit(role) && unit === undefined && !isSaidElsewhere(column, all)) return "unit";
  return hasBasis(role) && basis === undefined ? "basis" : undefined;
}

export function needsYou(column: ColumnGuess, all: readonly ColumnGuess[]): boolean {
  const { role, score, others } = column;
  if (role === "other") return (others[0]?.score ?? 0) >= mayBeFrom;
  return score < sureFrom || stillToSay(column, all) !== undefined;
}

export function partedColumns({ guess, isRemembered, learned }: FoundTable): PartedColumns {
  const { columns } = guess;
  const isKnown = isRemembered || learned !== undefined;
  const toLook = isKnown ? [] : columns.filter((each) => needsYou(each, columns));
  const rest = columns.filter((each) => !toLook.includes(each));
  return {
    toLook,
    understood: rest.filter(({ role }) => role !== "other" || isKnown),
    unused: rest.filter(({ role }) => role === "other" && !isKnown),
  };
}

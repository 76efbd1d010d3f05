/** Which table of a workbook is looked at first: one that tells much of its titrations or batches. */
import type { TableGuess } from "../../adopt/recognising/recognise";
import { likelyFrom } from "../../adopt/recognising/sure";
import type { ReadTable } from "./found-table";

export interface Offered {
  readonly tables: readonly ReadTable[];
  /** Tables that are no logbook, and our own: taken when a person says so. */
  readonly others: readonly ReadTable[];
}

/** How much is known of each of its rows. */
const told = ({ columns }: TableGuess): number =>
  new Set(
    columns.flatMap(({ role, score }) => (role !== "other" && score >= likelyFrom ? [role] : [])),
  ).size;

/** Titrations before what is made of them. */
const titrates = ({ columns }: TableGuess): number =>
  Number(columns.some(({ role }) => role === "titre"));

const firstOf = (all: readonly ReadTable[]): ReadTable | undefined =>
  [...all].sort(
    ({ guess: one }, { guess: other }) =>
      titrates(other) - titrates(one) || told(other) - told(one),
  )[0];

/** Less than this share of what another tells: a sum or a list beside that one. */
const leastShare = 0.5;

/** In the order of the sheets, but a block that tells little after all others, and after our own table. */
export function whichFirst({ tables, others }: Offered): Offered {
  const own = firstOf(others.filter(({ isOurs, guess }) => isOurs === true && guess.isLogbook));
  const most = Math.max(...[...tables, ...(own ? [own] : [])].map(({ guess }) => told(guess)));
  const tellsMuch = ({ guess, remembered }: ReadTable): boolean =>
    remembered !== undefined || told(guess) >= leastShare * most;
  const first = tables.filter(tellsMuch);
  const isOwnFirst = own !== undefined && first.length === 0;
  return {
    tables: [
      ...(isOwnFirst ? [own] : []),
      ...first,
      ...tables.filter((each) => !first.includes(each)),
    ],
    others: isOwnFirst ? others.filter((each) => each !== own) : others,
  };
}

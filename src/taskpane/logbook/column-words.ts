/** What a column is guessed to be, in words, and what else it may be said to be. */
import { columnLetters } from "../../sheet/cell-name";
import type { ColumnGuess } from "../../adopt/recognising/guess-columns";
import { likelyFrom, sureFrom } from "../../adopt/recognising/sure";
import { type RoleId, roles } from "../../adopt/recognising/roles";

/** How sure a guess is. The word carries it, not a colour. */
function sureness(score: number): string {
  if (score >= sureFrom) return "sure";
  if (score >= likelyFrom) return "likely";
  return score > 0 ? "a guess" : "not used";
}

/** @param isAcross headings stand one below the other, so that the column is a row */
export const columnName = ({ column, heading }: ColumnGuess, isAcross = false): string =>
  `${isAcross ? `Row ${String(column + 1)}` : columnLetters(column)}: ${heading === "" ? "no heading" : heading}`;

const lacking = {
  unit: "Pick its unit below. For the rest ",
  basis: "Say below what its grams are of. For the rest ",
} as const;

/** "Sure: the heading "Blank", the unit mL, figures around 0.15." */
export function reasonWords({ score, reasons }: ColumnGuess, lacks?: keyof typeof lacking): string {
  const sure = sureness(score);
  const words =
    lacks === undefined
      ? `${sure.charAt(0).toUpperCase()}${sure.slice(1)}`
      : `${lacking[lacks]}${sure}`;
  return reasons.length === 0 ? `${words}.` : `${words}: ${reasons.join(", ")}.`;
}

const nameOf = (id: RoleId): string => {
  const words = roles.find((role) => role.id === id)?.words ?? id;
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** The likeliest roles of this column first, then all others. */
export function roleOptions({ role, others }: ColumnGuess): readonly (readonly [RoleId, string])[] {
  const first = [...new Set<RoleId>([role, ...others.map((each) => each.role)])];
  const rest = roles.map(({ id }) => id).filter((id) => !first.includes(id));
  return [...first, ...rest].map((id) => [id, nameOf(id)] as const);
}

export { nameOf };

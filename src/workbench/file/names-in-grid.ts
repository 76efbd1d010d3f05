/**
 * Which defined names of a file the grid is given. Its engine writes out a name wherever it is used,
 * and the names in it: without end where a name leads back to itself, and doubling with each step where
 * each name uses another twice.
 */
import { tokensOf } from "../../sheet/formula/token";
import type { DefinedName } from "../../xlsx";
import { isGoodName } from "../../xlsx/good-name";
import { isWorkable } from "./workable";

/** How many names may stand in a name once all of them are written out. */
const mostWrittenOut = 256;

const folded = (name: string): string => name.toLowerCase();

/** Names that the format itself gives: print areas, filters. */
const isOwn = ({ name, isHidden }: DefinedName): boolean => !isHidden && !/^_xl/i.test(name);

export function namesInGrid(names: readonly DefinedName[]): DefinedName[] {
  const known = new Map<string, DefinedName[]>();
  for (const each of names.filter(isOwn)) {
    known.set(folded(each.name), [...(known.get(folded(each.name)) ?? []), each]);
  }
  const usedBy = ({ refersTo }: DefinedName): string[] =>
    tokensOf(refersTo)
      .map(({ text }) => folded(text.slice(text.lastIndexOf("!") + 1)))
      .filter((text) => known.has(text));
  /** Names written out in all; found from those that use none. */
  const counts = new Map<string, number>();
  let waiting = [...known].map(([name, all]) => ({ name, uses: all.flatMap(usedBy) }));
  for (let before = -1; waiting.length !== before;) {
    before = waiting.length;
    waiting = waiting.filter(({ name, uses }) => {
      const count = uses.reduce((sum, used) => sum + (counts.get(used) ?? Infinity), 1);
      if (!Number.isFinite(count)) return true;
      counts.set(name, count);
      return false;
    });
  }
  return [...known.values()]
    .flat()
    .filter(
      ({ name, refersTo }) =>
        isGoodName(name) &&
        isWorkable(refersTo) &&
        (counts.get(folded(name)) ?? Infinity) <= mostWrittenOut,
    );
}

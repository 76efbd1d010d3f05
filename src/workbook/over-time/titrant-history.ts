/** The checks of each titrant, bottle by bottle, in the order of time. */
import { baseNamed } from "../../core/reference/bases";

/** One row of `Titrants`. */
export interface TitrantCheck {
  /** The bottle, as it is marked. */
  readonly titrant: string;
  readonly base: string;
  readonly howKnown: string;
  /** mol/L. */
  readonly strength: number;
  /** ± percent; undefined where the row shows none. */
  readonly percent: number | undefined;
  /** As a spreadsheet counts days; undefined where there is no date. */
  readonly day: number | undefined;
}

/** A check with its day. */
export type DatedCheck = TitrantCheck & { readonly day: number };

export interface TitrantHistory {
  readonly titrant: string;
  readonly base: string;
  /** One or more, the earliest first; on one day as they stand in the table. */
  readonly checks: readonly DatedCheck[];
  readonly latest: DatedCheck;
  /** Rows left out, since they have no date. */
  readonly undated: number;
}

const plain = (word: string): string => word.trim().replace(/\s+/g, " ").toLowerCase();
const baseKey = (base: string): string => baseNamed(base)?.name ?? plain(base);

/** Are these one bottle of one base? Capitals and outer spaces do not matter. */
export const isSameTitrant = (
  one: Pick<TitrantHistory, "titrant" | "base">,
  other: Pick<TitrantHistory, "titrant" | "base">,
): boolean =>
  plain(one.titrant) === plain(other.titrant) && baseKey(one.base) === baseKey(other.base);

const isDated = (check: TitrantCheck): check is DatedCheck => check.day !== undefined;

/** A history for each bottle that has a dated check, the one checked last first. */
export function titrantHistories(rows: readonly TitrantCheck[]): TitrantHistory[] {
  const bottles: TitrantCheck[][] = [];
  for (const row of rows) {
    const bottle = bottles.find(([first]) => first && isSameTitrant(first, row));
    if (bottle) bottle.push(row);
    else bottles.push([row]);
  }
  return bottles
    .flatMap((all): TitrantHistory[] => {
      const checks = all.filter(isDated).sort((a, b) => a.day - b.day);
      const latest = checks.at(-1);
      if (!latest) return [];
      const { titrant, base } = latest;
      return [{ titrant, base, checks, latest, undated: all.length - checks.length }];
    })
    .sort((a, b) => b.latest.day - a.latest.day);
}

/** Headings of which no list holds a word, in place of some: what is told then is told by figures and neighbours alone. */
import { isUnread } from "../../../src/adopt/recognising/words/speaks-for";
import { type Chance, chanceOf } from "../habits/chance";
import type { Column } from "./columns";

export interface Nonsense {
  /** How many headings of a hundred. */
  readonly inHundred: number;
  /** The units stay beside them. */
  readonly keepsUnits: boolean;
}

const beginnings = "Br Dw Fl Gr Kn Kw Pl Pr Skr Sn Sw Thr Vl Vr Wr Zw".split(" ");
const middles = "a e i o u oo au ei".split(" ");
const ends = "bb ck dge ff lk mp nk rf rv sk v x zz".split(" ");
const seconds = ["", "", "ath", "ert", "olm", "umb", "ish"];

function word(chance: Chance): string {
  for (;;) {
    const made = `${chance.of(beginnings)}${chance.of(middles)}${chance.of(ends)}${chance.of(seconds)}`;
    if (isUnread(made)) return made;
  }
}

/** Numbered columns share a word. */
export function withNonsense(
  columns: readonly Column[],
  seed: number,
  { inHundred, keepsUnits }: Nonsense,
): Column[] {
  const chance = chanceOf(seed * 17 + 3);
  const words = new Map<string, string | undefined>();
  return columns.map((column) => {
    const { meaning, which } = column;
    if (!words.has(meaning))
      words.set(meaning, chance.yes(inHundred / 100) ? word(chance) : undefined);
    const nonsense = words.get(meaning);
    if (nonsense === undefined) return column;
    const isNumbered = columns.filter((each) => each.meaning === meaning).length > 1;
    return {
      ...column,
      heading: isNumbered ? `${nonsense} ${String(which + 1)}` : nonsense,
      isNonsense: true as const,
      ...(keepsUnits ? {} : { unitWord: "", unit: undefined }),
    };
  });
}

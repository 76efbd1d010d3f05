/** Where a figure stands among others. */
import type { Standard } from "./adapter";
import { isClose } from "./compare";
import { number } from "./convert";
import { doubt } from "./doubt";
import { figuresOf } from "./statistics";
import { type Cell, Fault, type Given } from "./value";

const first = (given: Given | undefined): Cell => given?.rows[0]?.[0] ?? null;

const sorted = (list: Given | undefined): number[] =>
  figuresOf(list ? [{ ...list, isRange: true }] : []).sort((a, b) => a - b);

/** Between the two that stand next to it, in proportion. */
function atShare(figures: readonly number[], share: number): number {
  if (figures.length === 0) doubt();
  if (figures.length === 0 || share < 0 || share > 1) throw new Fault("#NUM!");
  const place = share * (figures.length - 1);
  const below = Math.floor(place);
  const low = figures[below] ?? 0;
  const high = figures[below + 1] ?? low;
  return low + (place - below) * (high - low);
}

const ofShare = (shareOf: (given: number) => number): Standard => ({
  least: 2,
  most: 2,
  kinds: "lv",
  work: ([list, which]) => {
    const given = first(which);
    if (typeof given !== "number") doubt();
    const share = shareOf(number(given));
    if (share < 0 || share > 1) doubt();
    return atShare(sorted(list), share);
  },
});

const percentile = ofShare((share) => share);
const quartile = ofShare((which) => Math.trunc(which) / 4);

const rank: Standard = {
  least: 2,
  most: 3,
  kinds: "vlv",
  work: ([which, list, order]) => {
    const given = first(which);
    if (typeof given !== "number") doubt();
    const figure = number(given);
    const isRising = order !== undefined && number(first(order)) !== 0;
    const figures = sorted(list);
    if (figures.some((each) => each !== figure && isClose(each, figure))) doubt();
    if (!figures.includes(figure)) {
      doubt();
      throw new Fault("#N/A");
    }
    return 1 + figures.filter((each) => (isRising ? each < figure : each > figure)).length;
  },
};

export const ranks: Readonly<Record<string, Standard>> = {
  PERCENTILE: percentile,
  "PERCENTILE.INC": percentile,
  QUARTILE: quartile,
  "QUARTILE.INC": quartile,
  RANK: rank,
  "RANK.EQ": rank,
};

/** A straight line through pairs of figures. A pair counts where both are figures. */
import type { Standard } from "./adapter";
import { number } from "./convert";
import { doubt } from "./doubt";
import { quotient } from "./operators";
import { total } from "./statistics";
import { Fault, type Given } from "./value";

interface Sums {
  readonly meanX: number;
  readonly meanY: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

function pairsOf(ys: Given | undefined, xs: Given | undefined): (readonly [number, number])[] {
  const [some, others] = [ys?.rows.flat() ?? [], xs?.rows.flat() ?? []];
  if (some.length !== others.length || ys?.rows.length !== xs?.rows.length) {
    doubt();
    throw new Fault("#N/A");
  }
  return some.flatMap((y, at) => {
    const x = others[at] ?? null;
    for (const [cell, other] of [
      [y, x],
      [x, y],
    ] as const) {
      if (!(cell instanceof Fault)) continue;
      // beside what is no figure, an error counts to some and is left out by others
      if (typeof other !== "number") doubt();
      throw cell;
    }
    if (typeof y === "boolean" || typeof x === "boolean") doubt();
    return typeof y === "number" && typeof x === "number" ? [[x, y] as const] : [];
  });
}

function sumsOf(pairs: readonly (readonly [number, number])[]): Sums {
  // one point, or none, is no line: each program says so in its own way
  if (pairs.length < 2) doubt();
  const meanX = quotient(total(pairs.map(([x]) => x)), pairs.length);
  const meanY = quotient(total(pairs.map(([, y]) => y)), pairs.length);
  const of = (work: (x: number, y: number) => number) =>
    total(pairs.map(([x, y]) => work(x - meanX, y - meanY)));
  return {
    meanX,
    meanY,
    xx: of((x) => x * x),
    yy: of((_, y) => y * y),
    xy: of((x, y) => x * y),
  };
}

/** What is nothing but the last digits of its parts is nothing to divide by. */
function checked(sums: Sums, pairs: readonly (readonly [number, number])[]): Sums {
  const size = Math.max(...pairs.map(([x]) => Math.abs(x)), 0);
  if (sums.xx !== 0 && sums.xx <= (size * 1e-7) ** 2) doubt();
  return sums;
}

const ofLine = (work: (sums: Sums) => number): Standard => ({
  least: 2,
  most: 2,
  kinds: "l",
  work: ([ys, xs]) => {
    const pairs = pairsOf(ys, xs);
    return work(checked(sumsOf(pairs), pairs));
  },
});

const slope = ({ xy, xx }: Sums): number => quotient(xy, xx);
const intercept = (sums: Sums): number => sums.meanY - slope(sums) * sums.meanX;

const forecast: Standard = {
  least: 3,
  most: 3,
  kinds: "vll",
  work: ([at, ys, xs]) => {
    const cell = at?.rows[0]?.[0] ?? null;
    if (cell instanceof Fault) doubt();
    const x = number(cell);
    const pairs = pairsOf(ys, xs);
    const sums = checked(sumsOf(pairs), pairs);
    return sums.meanY + slope(sums) * (x - sums.meanX);
  },
};

export const lines: Readonly<Record<string, Standard>> = {
  SLOPE: ofLine(slope),
  INTERCEPT: ofLine(intercept),
  FORECAST: forecast,
  "FORECAST.LINEAR": forecast,
};

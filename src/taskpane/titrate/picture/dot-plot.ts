/** Where the dots of the replicates stand, and the mean with its interval: figures in, places out. */
import { scaleLinear } from "d3-scale";
import { type Tick, ticksOf } from "../../widgets/plot-parts";

export interface Dot {
  readonly name: string;
  /** % FFA. */
  readonly value: number;
  readonly isOmitted: boolean;
}

/** Dots that would cover each other stand one above another: row 0 is the lowest. */
export type Stacked<T> = T & { readonly x: number; readonly row: number };

export interface DotPlot {
  readonly dots: readonly Stacked<Dot>[];
  readonly mean: number;
  /** Ends of the interval; undefined while the doubt is not known. */
  readonly interval: readonly [from: number, to: number] | undefined;
  readonly ticks: readonly Tick[];
}

/** A dot is this wide; closer ones are stacked. */
const dotWidth = 13;

export function stacked<T extends { readonly x: number }>(dots: readonly T[]): Stacked<T>[] {
  const placed: Stacked<T>[] = [];
  for (const dot of [...dots].sort((a, b) => a.x - b.x)) {
    const near = placed.filter(({ x }) => Math.abs(x - dot.x) < dotWidth);
    let row = 0;
    while (near.some((each) => each.row === row)) row += 1;
    placed.push({ ...dot, row });
  }
  return placed;
}

/** No oil has less than no acid: the interval does not run on below 0. */
export const intervalOf = (mean: number, halfWidth: number): readonly [number, number] => [
  Math.max(0, mean - halfWidth),
  mean + halfWidth,
];

/**
 * @param width of the drawing, in its own units
 * @param edge room kept free on both sides
 */
export function dotPlot(
  dots: readonly Dot[],
  mean: number,
  halfWidth: number | undefined,
  width: number,
  edge: number,
): DotPlot {
  const ends = halfWidth === undefined ? [] : intervalOf(mean, halfWidth);
  const all = [mean, ...ends, ...dots.map(({ value }) => value)];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  // equal readings still need an axis of some width
  const room = high > low ? 0 : Math.max(Math.abs(mean) * 0.05, 0.01);
  const scale = scaleLinear()
    .domain([low - room, high + room])
    .range([edge, width - edge]);
  const [from, to] = ends;
  return {
    dots: stacked(dots.map((dot) => ({ ...dot, x: scale(dot.value) }))),
    mean: scale(mean),
    interval: from === undefined || to === undefined ? undefined : [scale(from), scale(to)],
    ticks: ticksOf(scale),
  };
}

/** Where the points and lines of a series stand: figures in, places out. */
import { scaleLinear } from "d3-scale";
import { dayInWords } from "../../workbook/over-time/day-words";
import type { Series } from "../../workbook/over-time/series";
import {
  namesApart,
  type PlacedLine,
  type PlotRoom,
  type Tick,
  ticksOf,
} from "../widgets/plot-parts";

type Place = readonly [x: number, y: number];

export interface SeriesPlot {
  readonly points: readonly { readonly at: Place; readonly isOut: boolean }[];
  readonly lines: readonly PlacedLine[];
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
}

const nameHeight = 13;
/** Room above the highest and below the lowest, as a part of what is between. */
const air = 0.08;

/** From the lowest to the highest, with some room; where all are equal, so much of it. */
export const extent = (values: readonly number[], least: number): readonly [number, number] => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  // equal values still need an axis of some width
  const room = high > low ? (high - low) * air : least;
  return [low - room, high + room];
};

const hundredth = 0.01;
const digitsSpanned = 10;

/**
 * Heights for a series: at least a hundredth of its figures, and ten of the last decimal shown, so that
 * what scatters by one digit does not look like much.
 */
export function heights(values: readonly number[], places: number): readonly [number, number] {
  const largest = Math.max(...values.map(Math.abs));
  const span = Math.max(largest * hundredth, digitsSpanned * 10 ** -places);
  const [low, high] = extent(values, span / 2);
  if (high - low >= span) return [low, high];
  const middle = (low + high) / 2;
  return [middle - span / 2, middle + span / 2];
}

/** Where each point stands across: its day, or its place among the batches. */
const acrossOf = ({ points, across }: Series): number[] =>
  points.map(({ day }, place) => (across === "days" ? Math.floor(day) : place));

/** What is written at the first point and at the last; at one alone where both are the same. */
function endsOf({ points, across }: Series): readonly string[] {
  const called = [points[0], points.at(-1)].map((point) =>
    point === undefined ? "" : across === "days" ? dayInWords(point.day) : point.of,
  );
  return points.length < 2 || (across === "days" && called[0] === called[1])
    ? called.slice(0, 1)
    : called;
}

export function seriesPlot(series: Series, room: PlotRoom): SeriesPlot {
  const { points, lines } = series;
  const days = acrossOf(series);
  const [firstDay, lastDay] = [Math.min(...days), Math.max(...days)];
  const x = scaleLinear()
    .domain(firstDay === lastDay ? [firstDay - 1, firstDay + 1] : [firstDay, lastDay])
    .range([room.left + 6, room.right - 6]);
  const all = [...points.map(({ value }) => value), ...lines.flatMap(({ values }) => values)];
  const y = scaleLinear().domain(heights(all, series.places)).range([room.bottom, room.top]);
  const placed = (values: readonly number[]): Place[] =>
    values.map((value, index) => [x(days[index] ?? firstDay), y(value)]);
  const names = namesApart(
    lines.map(({ values }) => y(values.at(-1) ?? 0)),
    room,
    nameHeight,
  );
  return {
    points: points.map(({ value, isOut }, index) => ({
      at: [x(days[index] ?? firstDay), y(value)],
      isOut,
    })),
    lines: lines.map(({ name, values }, index) => ({
      name,
      points: placed(values),
      nameAt: names[index] ?? 0,
    })),
    across: endsOf(series).map((label, place) => ({
      at: x(place === 0 ? firstDay : lastDay),
      label,
    })),
    up: ticksOf(y),
  };
}

/** The plot for somebody who does not see it: from when to when, where the last stands, what is out. */
export function plotWords(series: Series): string {
  const { title, unit, what, points, lines, places } = series;
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return title;
  const ends = endsOf(series).join(" to ");
  const figure = (value: number): string => `${value.toFixed(places)} ${unit}`;
  const out = points.filter(({ isOut }) => isOut).length;
  const held = lines.map(
    ({ name, values }) => `${name.toLowerCase()} ${figure(values.at(-1) ?? 0)}`,
  );
  return `${title}: ${what.toLowerCase()}, ${String(points.length)} from ${ends}; ${[`the last ${figure(last.value)}`, ...held].join(", ")}; ${out === 0 ? "none" : String(out)} flagged.`;
}

/** A series against another figure of the same rows, such as the acid of each batch: figures in, places out. */
import { scaleLinear } from "d3-scale";
import type { Against, Series } from "../../workbook/over-time/series";
import { extent, heights } from "./plot";
import { type PlotRoom, type Tick, ticksOf } from "../widgets/plot-parts";

export interface AgainstPlot {
  readonly points: readonly {
    readonly of: string;
    readonly at: readonly [x: number, y: number];
    readonly isOut: boolean;
    /** Heights of the lines it is held against. */
    readonly held: readonly number[];
  }[];
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
}

/** What stands on a row without that figure stands nowhere. */
const standing = ({ points, lines }: Series, against: Against) =>
  points.flatMap((point, index) => {
    const across = against.values[index];
    const held = lines.map(({ values }) => values[index] ?? Number.NaN).filter(Number.isFinite);
    return across === undefined ? [] : [{ ...point, across, held }];
  });

/** @returns undefined where fewer than two rows have the figure */
export function againstPlot(
  series: Series,
  against: Against,
  room: PlotRoom,
): AgainstPlot | undefined {
  const found = standing(series, against);
  if (found.length < 2) return undefined;
  const all = found.flatMap(({ value, held }) => [value, ...held]);
  const acids = found.map(({ across }) => across);
  const x = scaleLinear().domain(extent(acids, 1)).range([room.left, room.right]);
  const y = scaleLinear().domain(heights(all, series.places)).range([room.bottom, room.top]);
  return {
    points: found.map(({ of, value, across, held, isOut }) => ({
      of,
      isOut,
      at: [x(across), y(value)],
      held: held.map((each) => y(each)),
    })),
    across: ticksOf(x),
    up: ticksOf(y),
  };
}

/** The plot for somebody who does not see it. */
export function againstWords(series: Series, against: Against): string {
  const found = standing(series, against);
  const each = found.map(
    ({ of, across, value, isOut }) =>
      `${of} ${across.toFixed(against.places)}, ${value.toFixed(series.places)}${isOut ? ", flagged" : ""}`,
  );
  return `${series.what}, ${series.unit}, against ${against.what.toLowerCase()}, ${against.unit}: ${each.join("; ")}.`;
}

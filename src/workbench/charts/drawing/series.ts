/** The series of one side of a chart in their places. */
import type { ChartGroup, ChartPicture } from "../../../xlsx/file-chart";
import type { DrawnSeries } from "./drawing";
import { colourOf, dashOf, markOf } from "./marks";
import { type At, type Bar, barsPath, linePath, marksPath } from "./paths";
import type { Point, Pointed } from "./points";
import type { Scale } from "./scale";
import type { Side } from "./sides";

export interface Across {
  readonly at: (value: number) => number;
  /** Pixels from one category to the next. */
  readonly band: number;
}

export interface Placing {
  readonly across: Across;
  readonly up: Scale;
  readonly isLying: boolean;
  readonly blanks: ChartPicture["blanks"];
}

export const isOfBars = ({ kind }: ChartGroup): boolean => kind === "column" || kind === "bar";

const usualWidth = 2;

/** Where the bar of each series stands in its band: from the band's middle to its near side. */
function slots(group: ChartGroup, band: number): { width: number; of: (index: number) => number } {
  const isPiled = group.stacking !== "none";
  const series = isPiled ? 1 : Math.max(1, group.series.length);
  const overlap = Math.min(1, Math.max(-1, group.overlap / 100));
  const step = 1 - overlap;
  const all = 1 + (series - 1) * step;
  const width = band / (all + Math.max(0, group.gap) / 100);
  const first = (-all * width) / 2;
  return { width, of: (index) => first + (isPiled ? 0 : index * step * width) };
}

function barsOf(group: ChartGroup, index: number, points: readonly Point[], placing: Placing) {
  const { across, up, isLying } = placing;
  const { width, of } = slots(group, across.band);
  const bars = points.flatMap(({ across: place, from, to }): Bar[] => {
    if (to === undefined) return [];
    const side = across.at(place) + (isLying ? -of(index) - width : of(index));
    const start = from === 0 ? up.base : up.at(from);
    return [{ side: [side, side + width], ends: [start, up.at(to)] }];
  });
  return barsPath(bars, isLying);
}

function drawn(
  group: ChartGroup,
  { series, points }: Pointed,
  index: number,
  placing: Placing,
): DrawnSeries {
  const { across, up, blanks } = placing;
  const look = {
    colour: colourOf(series),
    width: series.width ?? usualWidth,
    dash: dashOf(series),
  };
  if (isOfBars(group)) {
    return { ...look, line: "", marks: "", bars: barsOf(group, index, points, placing) };
  }
  const places = points.map(({ across: place, to }): At | undefined =>
    to === undefined ? undefined : [across.at(place), up.at(to)],
  );
  const marks = marksPath(markOf(series), places);
  return { ...look, line: series.isJoined ? linePath(places, blanks) : "", marks, bars: "" };
}

/** Bars first: lines are drawn over them. */
export function seriesOn({ groups }: Side, placing: Placing): DrawnSeries[] {
  const inOrder = [...groups].sort((a, b) => Number(isOfBars(b.group)) - Number(isOfBars(a.group)));
  return inOrder.flatMap(({ group, pointed }) =>
    pointed.map((each, index) => drawn(group, each, index, placing)),
  );
}

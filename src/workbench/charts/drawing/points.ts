/** The points of a group of series: where each stands across, and from where to where it reaches. */
import type { ChartGroup, ChartPicture, ChartSeries } from "../../../xlsx/file-chart";
import { labelOf } from "./scale";

export interface Point {
  readonly across: number;
  /** Where it begins: zero, or the end of what it is stacked on. */
  readonly from: number;
  /** Undefined: a gap. */
  readonly to: number | undefined;
}

export interface Pointed {
  readonly series: ChartSeries;
  readonly points: readonly Point[];
}

type Across = "categories" | "dates" | "figures";

/** Dates that are no figures are categories. */
export function acrossOf({ axes, groups }: ChartPicture): Across {
  const [first] = groups;
  if (first?.kind === "scatter") return "figures";
  const axis = axes.find(({ number, kind }) => kind !== "figures" && first?.axes.includes(number));
  const figures = first?.series.find(({ across }) => across)?.across?.values ?? [];
  const areDays = figures.length > 0 && figures.every((value) => typeof value !== "string");
  return axis?.kind === "dates" && areDays ? "dates" : "categories";
}

const count = (series: ChartSeries): number =>
  Math.max(series.up.values.length, series.across?.values.length ?? 0);

/** What is below the axis, of the categories in their order. */
export function categoriesOf({ groups }: ChartPicture): string[] {
  const all = groups.flatMap(({ series }) => series);
  const named = all.find(({ across }) => across)?.across;
  const most = all.reduce((found, series) => Math.max(found, count(series)), 0);
  return Array.from({ length: most }, (_, index) => {
    const value = named ? named.values[index] : index + 1;
    if (value === undefined) return "";
    return typeof value === "number" ? labelOf(value, named?.format) : value;
  });
}

/** Figures across; where one is a text, all are counted instead, as spreadsheets do. */
function placesOf(series: ChartSeries, across: Across): (number | undefined)[] {
  const values = series.across?.values ?? [];
  const isCounted =
    across === "categories" ||
    values.length === 0 ||
    values.some((value) => typeof value === "string");
  const first = across === "categories" ? 0 : 1;
  return Array.from({ length: count(series) }, (_, index) => {
    if (isCounted) return index + first;
    const value = values[index];
    return typeof value === "number" ? value : undefined;
  });
}

const figure = (value: number | string | undefined): number | undefined =>
  typeof value === "number" ? value : undefined;

/** What each place adds up to, signs left out. */
function totals(group: ChartGroup): Map<number, number> {
  const sums = new Map<number, number>();
  for (const { up } of group.series) {
    up.values.forEach((value, index) => {
      sums.set(index, (sums.get(index) ?? 0) + Math.abs(figure(value) ?? 0));
    });
  }
  return sums;
}

export function pointsOf(
  group: ChartGroup,
  across: Across,
  blanks: ChartPicture["blanks"],
): Pointed[] {
  const isStacked = group.stacking !== "none" && group.kind !== "scatter";
  const sums = group.stacking === "full" ? totals(group) : undefined;
  const [above, below] = [new Map<number, number>(), new Map<number, number>()];
  return group.series.map((series) => {
    const places = placesOf(series, across);
    const points = places.flatMap((place, index): Point[] => {
      if (place === undefined) return [];
      const given = figure(series.up.values[index]) ?? (blanks === "zero" ? 0 : undefined);
      if (given === undefined) return [{ across: place, from: 0, to: undefined }];
      const value = sums ? given / (sums.get(index) || 1) : given;
      if (!isStacked) return [{ across: place, from: 0, to: value }];
      const pile = value < 0 && group.kind !== "line" ? below : above;
      const from = pile.get(index) ?? 0;
      pile.set(index, from + value);
      return [{ across: place, from, to: from + value }];
    });
    // days are drawn in their order, whatever that of the cells
    if (across === "dates") points.sort((a, b) => a.across - b.across);
    return { series, points };
  });
}

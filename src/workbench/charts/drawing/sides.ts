/** Which axes a chart has, which series go by which, and how each is written. */
import type { ChartAxis, ChartGroup, ChartPicture } from "../../../xlsx/file-chart";
import { acrossOf, pointsOf, type Pointed } from "./points";

export interface Side {
  readonly axis: ChartAxis | undefined;
  readonly groups: readonly { readonly group: ChartGroup; readonly pointed: readonly Pointed[] }[];
  readonly values: readonly number[];
  readonly format: string | undefined;
  readonly fromZero: boolean;
}

export interface Sides {
  readonly across: "categories" | "dates" | "figures";
  readonly acrossAxis: ChartAxis | undefined;
  /** Bars that go across: categories stand one above another. */
  readonly isLying: boolean;
  /** The first, and where some series go by another, the second. */
  readonly up: readonly Side[];
}

const isUpright = ({ side }: ChartAxis): boolean => side === "l" || side === "r";

const axesOf = ({ axes }: ChartPicture, group: ChartGroup): ChartAxis[] =>
  group.axes.flatMap((number) => axes.find((axis) => axis.number === number) ?? []);

function upAxis(picture: ChartPicture, group: ChartGroup): ChartAxis | undefined {
  const figures = axesOf(picture, group).filter(({ kind }) => kind === "figures");
  return group.kind === "scatter" ? (figures.find(isUpright) ?? figures[1]) : figures[0];
}

function acrossAxis(picture: ChartPicture, group: ChartGroup): ChartAxis | undefined {
  const up = upAxis(picture, group);
  return axesOf(picture, group).find((axis) => axis !== up);
}

const reached = (pointed: readonly Pointed[], isStacked: boolean): number[] =>
  pointed.flatMap(({ points }) =>
    points.flatMap(({ from, to }) => (to === undefined ? [] : isStacked ? [from, to] : [to])),
  );

export function sidesOf(picture: ChartPicture): Sides {
  const across = acrossOf(picture);
  const [first] = picture.groups;
  const byAxis = new Map<string, ChartGroup[]>();
  for (const group of picture.groups) {
    const number = upAxis(picture, group)?.number ?? "";
    byAxis.set(number, [...(byAxis.get(number) ?? []), group]);
  }
  const up = [...byAxis.values()].slice(0, 2).map((groups): Side => {
    const pointed = groups.map((group) => ({
      group,
      pointed: pointsOf(group, across, picture.blanks),
    }));
    const isFull = groups.some(({ stacking }) => stacking === "full");
    const series = groups.flatMap((group) => group.series);
    return {
      axis: groups[0] && upAxis(picture, groups[0]),
      groups: pointed,
      values: pointed.flatMap(({ group, pointed: all }) => reached(all, group.stacking !== "none")),
      format: isFull ? "0%" : series.find(({ up: { format } }) => format !== undefined)?.up.format,
      fromZero: groups.some(
        ({ kind, stacking }) => kind === "column" || kind === "bar" || stacking !== "none",
      ),
    };
  });
  return {
    across,
    acrossAxis: first && acrossAxis(picture, first),
    isLying: picture.groups.some(({ kind }) => kind === "bar"),
    up,
  };
}

/** Where the lines of the doses run: figures in, places out. Each line is named at its end. */
import { scaleLinear } from "d3-scale";
import { isProblem } from "../../core/problem/problem";
import type { Doses } from "../../workbook/what-if/doses";
import { columnName } from "../../workbook/what-if/names";
import {
  namesApart,
  type PlacedLine,
  type PlotRoom,
  type Tick,
  ticksOf,
} from "../widgets/plot-parts";
import type { WhatIfQuestion } from "../../workbook/what-if/question";

/** More lines than this cannot be told apart. */
export const mostLines = 6;

export interface Line {
  readonly name: string;
  /** Batch size and dose, from the smallest size to the largest. */
  readonly points: readonly (readonly [size: number, dose: number])[];
}

export interface DosePlot {
  readonly lines: readonly PlacedLine[];
  readonly across: readonly Tick[];
  readonly up: readonly Tick[];
}

/** Columns with a dose at every size; of many, some evenly from the first to the last. */
export function linesOf(question: WhatIfQuestion, doses: Doses): Line[] {
  const all = question.columns.flatMap((column, index): Line[] => {
    const points = doses.rows.flatMap((row, at): [number, number][] => {
      const [dose, size] = [row[index], question.sizes[at]];
      return dose === undefined || size === undefined || isProblem(dose)
        ? []
        : [[size.toNumber(), dose.toNumber()]];
    });
    return points.length === 0
      ? []
      : [{ name: columnName(question.by, column), points: points.sort(([a], [b]) => a - b) }];
  });
  if (all.length <= mostLines) return all;
  const step = (all.length - 1) / (mostLines - 1);
  return Array.from({ length: mostLines }, (_, at) => all[Math.round(at * step)]).filter(
    (each) => each !== undefined,
  );
}

const nameHeight = 14;

export function dosePlot(lines: readonly Line[], room: PlotRoom): DosePlot {
  const points = lines.flatMap((line) => line.points);
  const most = (pick: 0 | 1): number => Math.max(...points.map((point) => point[pick]));
  const x = scaleLinear()
    .domain([0, most(0)])
    .range([room.left, room.right]);
  const y = scaleLinear()
    .domain([0, most(1)])
    .range([room.bottom, room.top])
    .nice(4);
  const ends = lines.map(({ points: all }) => y(all.at(-1)?.[1] ?? 0));
  const names = namesApart(ends, room, nameHeight);
  return {
    lines: lines.map(({ name, points: all }, index) => ({
      name,
      points: all.map(([size, dose]) => [x(size), y(dose)] as const),
      nameAt: names[index] ?? 0,
    })),
    across: ticksOf(x),
    up: ticksOf(y),
  };
}

/** The plot for somebody who does not see it: where each line begins and ends. */
export function plotWords(lines: readonly Line[], unit: string, places: number): string {
  const each = lines.map(({ name, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return name;
    const at = ([size, dose]: readonly [number, number]): string =>
      `${dose.toFixed(places)} g at ${String(size)} ${unit}`;
    return points.length === 1
      ? `${name}, ${at(first)}`
      : `${name}, from ${at(first)} to ${at(last)}`;
  });
  return `Lye against batch size: ${each.join("; ")}.`;
}

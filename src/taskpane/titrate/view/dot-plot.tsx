/** The replicates as dots, with their mean and the interval of the result. Said in words as well. */
import { line, symbol, symbolCircle, symbolTimes } from "d3-shape";
import type { Dot } from "../picture/dot-plot";
import { dotPlot } from "../picture/dot-plot";
import { useMark } from "./desk";

const width = 300;
const edge = 20;
const rowHeight = 15;
const dotSize = 110;
const outline = line();
const circle = symbol(symbolCircle, dotSize)() ?? "";
const cross = symbol(symbolTimes, dotSize)() ?? "";

const pathOf = (points: [number, number][]): string => outline(points) ?? "";

export interface DotPlotProps {
  readonly dots: readonly Dot[];
  readonly mean: number;
  readonly halfWidth: number | undefined;
  /** The same in words. */
  readonly words: string;
}

export function DotPlotView({ dots, mean, halfWidth, words }: DotPlotProps) {
  const inMark = useMark();
  const plot = dotPlot(dots, mean, halfWidth, width, edge);
  const rows = Math.max(...plot.dots.map(({ row }) => row)) + 1;
  const bandAt = 14;
  const dotsAt = bandAt + 20 + (rows - 1) * rowHeight;
  const axisAt = dotsAt + 16;
  return (
    <svg
      className="plot"
      viewBox={`0 0 ${width} ${axisAt + 26}`}
      role="img"
      aria-label={inMark(words)}
    >
      {plot.interval === undefined ? null : (
        <path
          className="plot-interval"
          d={pathOf([
            [plot.interval[0], bandAt],
            [plot.interval[1], bandAt],
          ])}
        />
      )}
      <path
        className="plot-mean"
        d={pathOf([
          [plot.mean, bandAt - 8],
          [plot.mean, axisAt],
        ])}
      />
      {plot.dots.map(({ name, x, row, isOmitted }) => (
        <path
          key={name}
          className={isOmitted ? "plot-omitted" : "plot-dot"}
          d={isOmitted ? cross : circle}
          transform={`translate(${x},${dotsAt - row * rowHeight})`}
        />
      ))}
      <path
        className="plot-axis"
        d={pathOf([
          [edge / 2, axisAt],
          [width - edge / 2, axisAt],
        ])}
      />
      {plot.ticks.map(({ at, label }) => (
        <g key={label} transform={`translate(${at},${axisAt})`}>
          <path className="plot-axis" d="M0,0V5" />
          <text y={20} textAnchor="middle">
            {inMark(label)}
          </text>
        </g>
      ))}
    </svg>
  );
}

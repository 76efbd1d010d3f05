/** A series as points in the order of time, with its lines, each named at its end. Said in words as well. */
import { line, symbol, symbolCircle, symbolDiamond } from "d3-shape";
import type { Series } from "../../workbook/over-time/series";
import { plotWords, seriesPlot } from "./plot";
import { moved, PlotFrame } from "./plot-frame";

const height = 200;
const room = { left: 62, right: 240, top: 24, bottom: 166 };

const path = line<readonly [number, number]>();
export const dot = symbol(symbolCircle, 36)() ?? "";
/** What is out differs by its shape, not by its colour. */
export const out = symbol(symbolDiamond, 110)() ?? "";

export interface SeriesPlotProps {
  readonly series: Series;
  /** A figure in this person's marks. */
  readonly inMark: (text: string) => string;
}

export function SeriesPlotView({ series, inMark }: SeriesPlotProps) {
  const plot = seriesPlot(series, room);
  return (
    <PlotFrame
      series={series}
      words={plotWords(series)}
      height={height}
      room={room}
      up={plot.up}
      across={plot.across.map(({ at, label }, index) => ({
        at,
        label,
        anchor: index === 0 ? "start" : "end",
      }))}
      inMark={inMark}
    >
      {plot.lines.map(({ name, points, nameAt }, index) => (
        <g key={name}>
          <path
            className={`series-line series-line-${String(index)}`}
            d={path([...points]) ?? ""}
          />
          <text className="series-name" x={room.right + 4} y={nameAt + 4}>
            {name}
          </text>
        </g>
      ))}
      {plot.points.map(({ at: [x, y], isOut }, index) => (
        <path
          key={String(index)}
          className={isOut ? "series-out" : "series-dot"}
          d={isOut ? out : dot}
          transform={moved(x, y)}
        />
      ))}
    </PlotFrame>
  );
}

/** A series as points in the order of time, with its lines, each named at its end. Said in words as well. */
import { line, symbol, symbolCircle, symbolDiamond } from "d3-shape";
import type { Series } from "../../workbook/over-time/series";
import { plotWords, seriesPlot } from "./plot";

const width = 320;
const height = 200;
const room = { left: 62, right: 240, top: 24, bottom: 166 };

const path = line<readonly [number, number]>();
const dot = symbol(symbolCircle, 36)() ?? "";
/** What is out differs by its shape, not by its colour. */
const out = symbol(symbolDiamond, 110)() ?? "";

export interface SeriesPlotProps {
  readonly series: Series;
  /** A figure in this person's marks. */
  readonly inMark: (text: string) => string;
}

export function SeriesPlotView({ series, inMark }: SeriesPlotProps) {
  const plot = seriesPlot(series, room);
  return (
    <svg
      className="series-plot"
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      role="img"
      aria-label={inMark(plotWords(series))}
    >
      <text x={2} y={11}>
        {series.what}, {series.unit}
      </text>
      {plot.up.map(({ at, label }) => (
        <g key={label} transform={`translate(${String(room.left)},${String(at)})`}>
          <path className="series-grid" d={`M0,0H${String(room.right - room.left)}`} />
          <text x={-5} y={4} textAnchor="end">
            {inMark(label)}
          </text>
        </g>
      ))}
      <path
        className="series-axis"
        d={`M${String(room.left)},${String(room.bottom)}H${String(room.right)}`}
      />
      {plot.across.map(({ at, label }, index) => (
        <g key={label} transform={`translate(${String(at)},${String(room.bottom)})`}>
          <path className="series-axis" d="M0,0V5" />
          <text y={19} textAnchor={index === 0 ? "start" : "end"}>
            {label}
          </text>
        </g>
      ))}
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
          transform={`translate(${String(x)},${String(y)})`}
        />
      ))}
    </svg>
  );
}

/** A chart as a picture. It only draws. */
import { memo } from "react";
import type { ChartPicture } from "../../xlsx/file-chart";
import { draw } from "./drawing/draw";
import type { DrawnSeries, Words } from "./drawing/drawing";

function Text({ words: { x, y, text, anchor, size, isBold, turned } }: { words: Words }) {
  const at = `${String(x)},${String(y)}`;
  return (
    <text
      x={x}
      y={y}
      textAnchor={anchor}
      fontSize={size}
      fontWeight={isBold ? 700 : 400}
      transform={turned === undefined ? undefined : `rotate(${String(turned)},${at})`}
    >
      {text}
    </text>
  );
}

function Series({ series: { colour, line, marks, bars, width, dash } }: { series: DrawnSeries }) {
  return (
    <g fill={colour} stroke={colour}>
      {bars !== "" && <path d={bars} stroke="none" />}
      {line !== "" && (
        <path
          d={line}
          fill="none"
          strokeWidth={width}
          strokeDasharray={dash}
          strokeLinejoin="round"
        />
      )}
      {marks !== "" && <path d={marks} strokeWidth={1.4} />}
    </g>
  );
}

export interface ChartViewProps {
  readonly picture: ChartPicture;
  readonly width: number;
  readonly height: number;
}

/** Room for half a mark beyond the plot. */
const edge = 5;

export const ChartView = memo(({ picture, width, height }: ChartViewProps) => {
  const { words, strokes, plot, series, legend } = draw(picture, width, height);
  const [x, y] = [plot.left - edge, plot.top - edge];
  const [wide, high] = [plot.right - plot.left + 2 * edge, plot.bottom - plot.top + 2 * edge];
  return (
    <svg
      className="chart"
      width={width}
      height={height}
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      aria-hidden="true"
    >
      {strokes.map(({ path, is }, index) => (
        <path key={index} className={`chart-${is}`} d={path} />
      ))}
      <svg
        x={x}
        y={y}
        width={wide}
        height={high}
        viewBox={[x, y, wide, high].map(String).join(" ")}
        overflow="hidden"
      >
        {series.map((each, index) => (
          <Series key={index} series={each} />
        ))}
      </svg>
      {legend.map((each, index) => (
        <g key={index}>
          <Series series={each} />
          <Text words={each.name} />
        </g>
      ))}
      {words.map((each, index) => (
        <Text key={index} words={each} />
      ))}
    </svg>
  );
});

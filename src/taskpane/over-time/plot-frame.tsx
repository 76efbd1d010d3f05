/** What every plot stands in: said in words, its figures up with their lines, and its marks across. */
import type { ReactNode } from "react";
import type { Series } from "../../workbook/over-time/series";
import type { PlotRoom, Tick } from "../widgets/plot-parts";

const width = 320;

interface PlotFrameProps {
  readonly series: Series;
  readonly words: string;
  readonly height: number;
  readonly room: PlotRoom;
  readonly up: readonly Tick[];
  readonly across: readonly (Tick & { readonly anchor: "start" | "middle" | "end" })[];
  readonly inMark: (text: string) => string;
  readonly children: ReactNode;
}

export const moved = (x: number, y: number): string => `translate(${String(x)},${String(y)})`;

export const PlotFrame = (props: PlotFrameProps) => {
  const { series, words, height, room, up, across, inMark, children } = props;
  return (
    <svg
      className="series-plot"
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      role="img"
      aria-label={inMark(words)}
    >
      <text x={2} y={11}>
        {series.what}, {series.unit}
      </text>
      {up.map(({ at, label }) => (
        <g key={label} transform={moved(room.left, at)}>
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
      {across.map(({ at, label, anchor }) => (
        <g key={label} transform={moved(at, room.bottom)}>
          <path className="series-axis" d="M0,0V5" />
          <text y={19} textAnchor={anchor}>
            {label}
          </text>
        </g>
      ))}
      {children}
    </svg>
  );
};

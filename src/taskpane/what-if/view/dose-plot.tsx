/** The doses as lines, each named at its end. Said in words as well. */
import { line, symbol, symbolCircle } from "d3-shape";
import { dosePlot, type Line } from "../plot";
import { useMark } from "./desk";

const width = 320;
const height = 210;
const room = { left: 46, right: 212, top: 24, bottom: 172 };
/** Of a name at the end of a line. */
const longest = 14;
/** With more sizes the dots would be a line of their own. */
const mostDots = 15;

const path = line<readonly [number, number]>();
const dot = symbol(symbolCircle, 26)() ?? "";

const cut = (name: string): string =>
  name.length > longest ? `${name.slice(0, longest - 1)}…` : name;

export interface DosePlotProps {
  readonly lines: readonly Line[];
  /** Of the batch sizes. */
  readonly unit: string;
  /** The same in words. */
  readonly words: string;
}

export function DosePlotView({ lines, unit, words }: DosePlotProps) {
  const inMark = useMark();
  const plot = dosePlot(lines, room);
  return (
    <svg
      className="dose-plot"
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      role="img"
      aria-label={inMark(words)}
    >
      <text x={2} y={11}>
        Lye, g
      </text>
      {plot.up.map(({ at, label }) => (
        <g key={label} transform={`translate(${String(room.left)},${String(at)})`}>
          <path className="dose-grid" d={`M0,0H${String(room.right - room.left)}`} />
          <text x={-6} y={4} textAnchor="end">
            {inMark(label)}
          </text>
        </g>
      ))}
      {plot.across.map(({ at, label }) => (
        <g key={label} transform={`translate(${String(at)},${String(room.bottom)})`}>
          <path className="dose-axis" d="M0,0V5" />
          <text y={18} textAnchor="middle">
            {inMark(label)}
          </text>
        </g>
      ))}
      <path
        className="dose-axis"
        d={`M${String(room.left)},${String(room.bottom)}H${String(room.right)}`}
      />
      <text x={room.left} y={height - 4}>
        Batch size, {unit}
      </text>
      {plot.lines.map(({ name, points, nameAt }, at) => {
        const [x, y] = points.at(-1) ?? [0, 0];
        return (
          <g key={`${name} ${String(at)}`}>
            <path className="dose-line" d={path([...points]) ?? ""} />
            {points.length > mostDots
              ? null
              : points.map(([px, py], index) => (
                  <path
                    key={String(index)}
                    className="dose-dot"
                    d={dot}
                    transform={`translate(${String(px)},${String(py)})`}
                  />
                ))}
            <path
              className="dose-lead"
              d={`M${String(x + 3)},${String(y)}L${String(room.right + 10)},${String(nameAt)}`}
            />
            <text className="dose-name" x={room.right + 13} y={nameAt + 4}>
              {inMark(cut(name))}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

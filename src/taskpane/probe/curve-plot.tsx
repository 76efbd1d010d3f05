/** The curve of a probe and its slope, drawn as the readings come. Said in words as well. */
import "./probe.css";
import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import { isProblem } from "../../core/problem/problem";
import { type ProbePoint, steepness } from "../../core/titration/probe";
import { ticksOf } from "../widgets/plot-parts";

const width = 320;
const height = 190;
const room = { left: 44, right: 300, top: 18, bottom: 160 };
const path = line<readonly [number, number]>();

const scaled = (values: readonly number[], to: readonly [number, number]) => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return scaleLinear()
    .domain(low === high ? [low - 1, high + 1] : [low, high])
    .range([...to]);
};

export interface CurvePlotProps {
  readonly points: readonly ProbePoint[];
  /** mL; undefined while there is none. */
  readonly end: number | undefined;
  readonly inMark: (text: string) => string;
}

export function CurvePlot({ points, end, inMark }: CurvePlotProps) {
  if (points.length < 2) return null;
  const at = points.map(([volume, reading]) => [volume.toNumber(), reading.toNumber()] as const);
  const steps = steepness(points);
  const slopes = isProblem(steps)
    ? []
    : steps.map(({ middle, slope }) => [middle.toNumber(), Math.abs(slope.toNumber())] as const);
  const x = scaled(
    at.map(([volume]) => volume),
    [room.left, room.right],
  );
  const y = scaled(
    at.map(([, reading]) => reading),
    [room.bottom, room.top],
  );
  const up = scaled([0, ...slopes.map(([, slope]) => slope)], [room.bottom, room.top]);
  const words = `${String(points.length)} readings of the probe against mL, with the slope of each step${
    end === undefined ? "" : `; end point ${end.toFixed(2)} mL`
  }`;
  return (
    <svg
      className="probe-plot"
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      role="img"
      aria-label={inMark(words)}
    >
      <text x={2} y={11}>
        Reading (dots), slope (line)
      </text>
      {ticksOf(y).map(({ at: place, label }) => (
        <text key={label} x={room.left - 6} y={place + 4} textAnchor="end">
          {inMark(label)}
        </text>
      ))}
      {ticksOf(x).map(({ at: place, label }) => (
        <text key={label} x={place} y={room.bottom + 18} textAnchor="middle">
          {inMark(label)}
        </text>
      ))}
      <path
        className="probe-axis"
        d={`M${String(room.left)},${String(room.bottom)}H${String(room.right)}`}
      />
      <path
        className="probe-slope"
        d={path(slopes.map(([volume, slope]) => [x(volume), up(slope)])) ?? ""}
      />
      {end === undefined ? null : (
        <path
          className="probe-end"
          d={`M${String(x(end))},${String(room.top)}V${String(room.bottom)}`}
        />
      )}
      <path className="probe-curve" d={path(at.map(([v, r]) => [x(v), y(r)])) ?? ""} />
      {at.map(([volume, reading], index) => (
        <circle key={String(index)} className="probe-dot" cx={x(volume)} cy={y(reading)} r={3.5} />
      ))}
    </svg>
  );
}

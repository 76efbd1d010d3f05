/** A point for each row, its two figures across and up; what it is held against as a short line. */
import { symbol, symbolCircle, symbolDiamond } from "d3-shape";
import type { Against } from "../../workbook/over-time/series";
import { againstPlot, againstWords } from "./against";
import type { SeriesPlotProps } from "./series-plot";

const width = 320;
const height = 220;
const room = { left: 50, right: 306, top: 24, bottom: 168 };

const dot = symbol(symbolCircle, 36)() ?? "";
/** What is out differs by its shape and its name, not by its colour. */
const out = symbol(symbolDiamond, 110)() ?? "";
const half = 7;

const moved = (x: number, y: number): string => `translate(${String(x)},${String(y)})`;

export function AgainstPlotView({
  series,
  against,
  inMark,
}: SeriesPlotProps & { against: Against }) {
  const plot = againstPlot(series, against, room);
  if (plot === undefined) return null;
  const heldBy = series.lines.map(({ name }) => name.toLowerCase()).join(", ");
  return (
    <>
      <svg
        className="series-plot"
        viewBox={`0 0 ${String(width)} ${String(height)}`}
        role="img"
        aria-label={inMark(againstWords(series, against))}
      >
        <text x={2} y={11}>
          {series.what}, {series.unit}
        </text>
        {plot.up.map(({ at, label }) => (
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
        {plot.across.map(({ at, label }) => (
          <g key={label} transform={moved(at, room.bottom)}>
            <path className="series-axis" d="M0,0V5" />
            <text y={19} textAnchor="middle">
              {inMark(label)}
            </text>
          </g>
        ))}
        <text x={room.right} y={room.bottom + 40} textAnchor="end">
          {against.what}, {against.unit}
        </text>
        {plot.points.map(({ of, at: [x, y], isOut, held }) => (
          <g key={of}>
            {held.map((level, index) => (
              <path
                key={String(index)}
                className="series-held"
                d={`M${String(x - half)},${String(level)}h${String(2 * half)}M${String(x)},${String(level)}V${String(y)}`}
              />
            ))}
            <path
              className={isOut ? "series-out" : "series-dot"}
              d={isOut ? out : dot}
              transform={moved(x, y)}
            />
            {isOut ? (
              <text
                x={x < room.right - 60 ? x + 10 : x - 10}
                y={y + 4}
                textAnchor={x < room.right - 60 ? "start" : "end"}
              >
                {of}
              </text>
            ) : null}
          </g>
        ))}
      </svg>
      <p className="legend soft">
        Each point is a batch, its acid across.
        {heldBy === "" ? "" : ` Short line: ${heldBy}.`}
        {plot.points.some(({ isOut }) => isOut) ? " Large diamonds are flagged." : ""}
      </p>
    </>
  );
}

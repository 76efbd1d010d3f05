/** A point for each row, its two figures across and up; what it is held against as a short line. */
import type { Against } from "../../workbook/over-time/series";
import { againstPlot, againstWords } from "./against";
import { moved, PlotFrame } from "./plot-frame";
import { dot, out, type SeriesPlotProps } from "./series-plot";

const height = 220;
const room = { left: 50, right: 306, top: 24, bottom: 168 };

const half = 7;

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
      <PlotFrame
        series={series}
        words={againstWords(series, against)}
        height={height}
        room={room}
        up={plot.up}
        across={plot.across.map(({ at, label }) => ({
          at,
          label: inMark(label),
          anchor: "middle",
        }))}
        inMark={inMark}
      >
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
      </PlotFrame>
      <p className="legend soft">
        Each point is a batch, its acid across.
        {heldBy === "" ? "" : ` Short line: ${heldBy}.`}
        {plot.points.some(({ isOut }) => isOut) ? " Large diamonds are flagged." : ""}
      </p>
    </>
  );
}

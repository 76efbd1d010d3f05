/** Each titre as a dot the moment it is added, on the divisions of the burette. Said in words as well. */
import { line, symbol, symbolCircle, symbolTimes, symbolTriangle } from "d3-shape";
import { divisionPlot, type Titrated } from "../picture/divisions";
import { oneDivision } from "../picture/one-division";
import { bandWords, divisionWords, titresInWords } from "../picture/words";
import { titratedOf } from "../picture/titrated";
import { useDesk, useMark } from "./desk";

const width = 300;
const edge = 16;
const rowHeight = 15;
const dotSize = 110;
const tickLength = 6;
const labelledTick = 11;
const outline = line();
const shapes: Record<Titrated["mark"], string> = {
  agrees: symbol(symbolCircle, dotSize)() ?? "",
  "not tested": symbol(symbolCircle, dotSize)() ?? "",
  suspect: symbol(symbolTriangle, dotSize)() ?? "",
  apart: symbol(symbolTriangle, dotSize)() ?? "",
  omitted: symbol(symbolTimes, dotSize)() ?? "",
};

export function DivisionPlotView() {
  const { view, bench } = useDesk();
  const inMark = useMark();
  const seen = titratedOf(view);
  if (seen === undefined) return null;
  const { titrated, band, step, places } = seen;
  const plot = divisionPlot(titrated, band, step, width, edge);
  const rows = Math.max(...plot.dots.map(({ row }) => row)) + 1;
  const dotsAt = 12 + (rows - 1) * rowHeight;
  const axisAt = dotsAt + 14;
  const [from, to] = plot.band;
  const standing = titrated.filter(({ mark }) => mark !== "omitted").length;
  const division = oneDivision(view, bench.unit);
  const isOut = titrated.some(({ mark }) => mark === "suspect" || mark === "apart");
  const isOmitted = titrated.some(({ mark }) => mark === "omitted");
  return (
    <figure className="divisions">
      <svg
        className="plot"
        viewBox={`0 0 ${width} ${axisAt + 30}`}
        role="img"
        aria-label={inMark(titresInWords(titrated, places))}
      >
        <rect className="plot-band" x={from} y={0} width={to - from} height={axisAt} />
        {plot.dots.map(({ name, x, row, mark }) => (
          <path
            key={name}
            className={mark === "omitted" ? "plot-omitted" : "plot-dot"}
            d={shapes[mark]}
            transform={`translate(${x},${dotsAt - row * rowHeight})`}
          />
        ))}
        <path
          className="plot-axis"
          d={
            outline([
              [edge / 2, axisAt],
              [width - edge / 2, axisAt],
            ]) ?? ""
          }
        />
        {plot.ticks.map(({ x, label }) => (
          <g key={x} transform={`translate(${x},${axisAt})`}>
            <path
              className="plot-axis"
              d={`M0,0V${label === undefined ? tickLength : labelledTick}`}
            />
            {label === undefined ? null : (
              <text y={25} textAnchor="middle">
                {inMark(label)}
              </text>
            )}
          </g>
        ))}
      </svg>
      <figcaption className="legend soft">
        {inMark(bandWords(band, standing, places))} {isOut ? "Triangle: apart. " : ""}
        {isOmitted ? "Cross: left out. " : ""}
        {division === undefined ? "" : inMark(divisionWords(division))}
      </figcaption>
    </figure>
  );
}

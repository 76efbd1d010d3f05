/** The figures of a series, in a box that scrolls of its own where the pane is narrow. */
import { dayInWords } from "../../workbook/over-time/day-words";
import { judgementHeading, type Series } from "../../workbook/over-time/series";
import type { SeriesPlotProps } from "./series-plot";

const held = ({ lines, places }: Series, point: number): string[] =>
  lines.map(({ values }) => (values[point] ?? 0).toFixed(places));

export function SeriesTable({ series, inMark }: SeriesPlotProps) {
  const { title, unit, points, lines, places, called, source } = series;
  const hasWords = points.some(({ said }) => said !== "");
  return (
    <details className="more">
      <summary>The figures</summary>
      <div className="series-box" role="region" aria-label={`Figures: ${title}`} tabIndex={0}>
        <table className="series-table">
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">{called}</th>
              <th scope="col">{unit}</th>
              {lines.map(({ name }) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
              {hasWords ? <th scope="col">{judgementHeading}</th> : null}
            </tr>
          </thead>
          <tbody>
            {points.map(({ day, value, of, said }, index) => (
              <tr key={String(index)}>
                <th scope="row">{dayInWords(day)}</th>
                <td>{of}</td>
                <td>{inMark(value.toFixed(places))}</td>
                {held(series, index).map((figure, column) => (
                  <td key={String(column)}>{inMark(figure)}</td>
                ))}
                {hasWords ? <td>{said}</td> : null}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="legend soft">{source}</p>
    </details>
  );
}

/** The charts of a book of ours, as they would be read from its file. */
import type { Book, BookChart } from "../../sheet/book";
import { absoluteArea } from "../../xlsx/cell-address";
import type { ChartAxis, FileChart } from "../../xlsx/file-chart";

const axis = (
  number: string,
  side: ChartAxis["side"],
  title: string,
  format?: string,
): ChartAxis => ({
  number,
  kind: "figures",
  side,
  title: { text: title },
  ...(format === undefined ? {} : { format }),
  isHidden: false,
  hasLines: true,
  isReversed: false,
});

const cells = ({ sheet, ...area }: BookChart["series"][number]["up"]) => ({
  refersTo: absoluteArea(sheet, area),
  values: [],
});

function chartOf(sheet: string, chart: BookChart, index: number): FileChart {
  const { row, column, rows, columns } = chart.over;
  return {
    sheet,
    name: `Chart ${String(index + 1)}`,
    description: chart.description,
    anchor: {
      from: { row, column, x: 0, y: 0 },
      to: { row: row + rows, column: column + columns, x: 0, y: 0 },
    },
    kind: "scatter",
    picture: {
      title: { text: chart.title },
      isNamedBySeries: false,
      legend: "b",
      blanks: "gap",
      leavesHidden: true,
      axes: [
        axis("across", "b", chart.acrossTitle, chart.acrossFormat),
        axis("up", "l", chart.upTitle, "General"),
      ],
      groups: [
        {
          kind: "scatter",
          stacking: "none",
          gap: 0,
          overlap: 0,
          axes: ["across", "up"],
          series: chart.series.map(({ name, across, up }, place) => ({
            place,
            isJoined: true,
            name: { text: "", refersTo: cells({ ...name, rows: 1, columns: 1 }).refersTo },
            across: cells(across),
            up: cells(up),
          })),
        },
      ],
    },
  };
}

export const chartsOfBook = ({ sheets }: Book): FileChart[] =>
  sheets.flatMap(({ name, charts = [] }) =>
    charts.map((chart, index) => chartOf(name, chart, index)),
  );

/** Series over time as a sheet: a table of figures each, with a live summary beside it and room for a chart. */
import { areaName } from "../../sheet/cell-name";
import type { Area } from "../../sheet/area";
import type { BookCell } from "../../sheet/book";
import { judgementHeading, type Series } from "./series";

/** Rows a chart lies over. */
const chartRows = 17;
/** Title, sentence, headings. */
const rowsAbove = 3;
/** Rows that the longest summary fills. */
const summaryRows = 12;
/** A table is no wider than this; the summary stands right of it. */
const summaryColumn = 7;

export interface Section {
  readonly series: Series;
  /** Figures of one column: the days first, then the lot or bottle, the value, each line. */
  readonly column: (at: number) => Area;
  /** The cells a chart would lie over. */
  readonly chart: Area;
}

export interface OverTimeSheet {
  readonly rows: readonly (readonly (BookCell | null)[])[];
  readonly columnWidths: readonly number[];
  readonly sections: readonly Section[];
}

const digitsOf = ({ places }: Series): string => `0.${"0".repeat(places)}`;

/** The catalogue's own summary of the same cells: it follows when a figure is changed. */
function summaryOf(series: Series, days: Area, values: Area, today: number): string {
  const [of, on] = [areaName(values), areaName(days)];
  if (series.summary === "control") return `=TITRE.CONTROL(${of})`;
  return series.summary === "strength" ? `=TITRE.STRENGTHON(${on},${of},${String(today)})` : "";
}

/** A figure on the sheet is read, not reckoned on: six digits say all it knows. */
const figure = (value: number): number => Number(value.toPrecision(6));

/** Nothing here is typed. */
const style = "calculated";

const heading = (value: string): BookCell => ({ value, style: "heading" });

function tableRows(series: Series): (BookCell | null)[][] {
  const { points, lines, what, unit, called } = series;
  const format = digitsOf(series);
  return [
    ["Day", called, `${what}, ${unit}`, ...lines.map(({ name }) => name), judgementHeading].map(
      heading,
    ),
    ...points.map(({ day, of, value, said }, place): BookCell[] => [
      { value: Math.floor(day), format: "yyyy-mm-dd", style },
      { value: of, style },
      { value: figure(value), format, style },
      ...lines.map(({ values }): BookCell => ({
        value: figure(values[place] ?? 0),
        format,
        style,
      })),
      { value: said, style },
    ]),
  ];
}

/** The formula beside the headings, and the look of the cells it fills. */
function addSummary(section: (BookCell | null)[][], formula: string, format: string): void {
  for (let at = 0; at < summaryRows; at += 1) {
    const row = (section[rowsAbove - 1 + at] ??= []);
    while (row.length < summaryColumn) row.push(null);
    row.push(at === 0 ? { formula, style } : { style }, { style, format });
  }
}

/** @param hasCharts room is left for a chart under each table */
export function overTimeSheet(
  all: readonly Series[],
  today: number,
  hasCharts: boolean,
): OverTimeSheet {
  const rows: (BookCell | null)[][] = [];
  const sections: Section[] = [];
  for (const series of all) {
    const top = rows.length;
    const count = series.points.length;
    const column = (at: number): Area => ({
      row: top + rowsAbove,
      column: at,
      rows: count,
      columns: 1,
    });
    const section: (BookCell | null)[][] = [
      [{ value: series.title, style: "title" } as const],
      [{ value: `${series.sentence} ${series.source}`, style: "words" } as const],
      ...tableRows(series),
    ];
    const formula = summaryOf(series, column(0), column(2), today);
    if (formula !== "") addSummary(section, formula, digitsOf(series));
    const length = Math.max(section.length, rowsAbove + summaryRows) + 1;
    const chart = { row: top + length, column: 0, rows: chartRows, columns: summaryColumn };
    const whole = length + (hasCharts ? chartRows + 1 : 0);
    rows.push(...section, ...Array.from({ length: whole - section.length }, () => []));
    sections.push({ series, column, chart });
  }
  return { rows, columnWidths: [12, 10, 16, 12, 18, 18, 18, 26, 16], sections };
}

/** What a chart shows, for somebody who does not see it; and what is said of one that is not drawn. */
import { counted } from "../../sheet/counted";
import type { ChartFigures, ChartPicture, ChartSeries, FileChart } from "../../xlsx/file-chart";
import { nameOf } from "./drawing/names";
import { extentOf, labelOf } from "./drawing/scale";
import { titleOf } from "./drawing/titles";

const mostSeries = 6;

const article = (kind: string): string => (/^[aeiou]/i.test(kind) ? "An" : "A");

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const figuresIn = ({ values }: ChartFigures): number[] => {
  const found: number[] = [];
  values.forEach((value) => {
    if (typeof value === "number") found.push(value);
  });
  return found;
};

/** From the lowest to the highest, as the cells show them. */
function range(figures: ChartFigures, format = figures.format): string {
  const ends = extentOf(figuresIn(figures));
  if (!ends) return "";
  const [low, high] = ends.map((end) => labelOf(end, format));
  return low === high ? (low ?? "") : `${low ?? ""} to ${high ?? ""}`;
}

function seriesWords({ name, up }: ChartSeries, index: number): string {
  const points = figuresIn(up).length;
  const called = nameOf(name?.text, index);
  if (points === 0) return `${called}, no points`;
  return `${called}, ${counted(points, "point")}, ${range(up)}`;
}

function acrossWords({ axes, groups }: ChartPicture): string {
  const [first] = groups.flatMap(({ series }) => series);
  const across = first?.across;
  if (!across) return "";
  const axis = axes.find(({ number }) => groups[0]?.axes.includes(number));
  const said = axis?.title ? `${axis.title.text} ` : "";
  const figures = range(across, axis?.format ?? across.format);
  if (figures !== "") return ` Across: ${said}${figures}.`;
  const words = across.values.filter((value) => typeof value === "string");
  const [from, to] = [words[0], words.at(-1)];
  return from === undefined ? "" : ` Across: ${said}${from} to ${String(to)}.`;
}

/** Title, kind, series and their ranges. */
export function chartWords(chart: FileChart, picture: ChartPicture): string {
  const title = titleOf(picture) || chart.name;
  const all = picture.groups.flatMap(({ series }) => series);
  const named = all.slice(0, mostSeries).map(seriesWords);
  const rest = all.length - named.length;
  const more = rest > 0 ? [`and ${String(rest)} more`] : [];
  const series = [...named, ...more].join("; ");
  const said = chart.description ? ` ${chart.description.replace(/[.\s]*$/, ".")}` : "";
  return `${upperFirst(chart.kind)} chart: ${title}.${said} ${series === "" ? "No series" : series}.${acrossWords(picture)}`;
}

/** @param what the chart's title, or its name */
export function notDrawnWords({ kind, name }: FileChart): string {
  const called = name === "" ? "" : ` called ${name}`;
  return kind === "damaged"
    ? `A chart${called} is in the file and stays; it cannot be read, and is not drawn here.`
    : `${article(kind)} ${kind} chart${called} is in the file and stays; it is not drawn here.`;
}

/** One line of a chart: where its figures stand, what they are now, and how it is drawn. */
import { absoluteArea } from "../cell-address";
import { escapeAttribute, escapeText } from "../xml/escape";
import type { ChartFigures, Series } from "./chart";

/** Told apart by colour, by mark and by dash, so that no colour is needed to read them. */
const strokes = [
  { colour: "0B5B65", mark: "circle", dash: "solid" },
  { colour: "B4530A", mark: "square", dash: "dash" },
  { colour: "4B3F8F", mark: "diamond", dash: "solid" },
  { colour: "8A1C3B", mark: "triangle", dash: "sysDash" },
  { colour: "2F6B2F", mark: "x", dash: "solid" },
  { colour: "444444", mark: "plus", dash: "lgDash" },
] as const;

function numbers({ sheet, area, figures }: ChartFigures, format: string): string {
  const points = figures.flatMap((figure, place) =>
    figure === undefined
      ? []
      : [`<c:pt idx="${String(place)}"><c:v>${String(figure)}</c:v></c:pt>`],
  );
  return `<c:numRef><c:f>${escapeText(absoluteArea(sheet, area))}</c:f><c:numCache><c:formatCode>${escapeText(format)}</c:formatCode><c:ptCount val="${String(figures.length)}"/>${points.join("")}</c:numCache></c:numRef>`;
}

const filled = (colour: string): string =>
  `<a:solidFill><a:srgbClr val="${escapeAttribute(colour)}"/></a:solidFill>`;

export function seriesXml(series: Series, place: number, acrossFormat: string): string {
  const { colour, mark, dash } = strokes[place % strokes.length] ?? strokes[0];
  const { name, across, up } = series;
  const number = String(place);
  const title = `<c:tx><c:strRef><c:f>${escapeText(absoluteArea(name.sheet, name.area))}</c:f><c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>${escapeText(name.text)}</c:v></c:pt></c:strCache></c:strRef></c:tx>`;
  const line = `<c:spPr><a:ln w="22225" cap="rnd">${filled(colour)}<a:prstDash val="${dash}"/><a:round/></a:ln></c:spPr>`;
  const marker = `<c:marker><c:symbol val="${mark}"/><c:size val="6"/><c:spPr>${filled(colour)}<a:ln w="9525">${filled(colour)}</a:ln></c:spPr></c:marker>`;
  return `<c:ser><c:idx val="${number}"/><c:order val="${number}"/>${title}${line}${marker}<c:xVal>${numbers(across, acrossFormat)}</c:xVal><c:yVal>${numbers(up, "General")}</c:yVal><c:smooth val="0"/></c:ser>`;
}

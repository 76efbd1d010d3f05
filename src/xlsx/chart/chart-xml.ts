/** The part that holds a chart (ECMA-376 part 1, 21.2): a scatter of points joined by lines. */
import { namespaces } from "../package/names";
import { escapeAttribute, escapeText } from "../xml/escape";
import type { Chart } from "./chart";
import { seriesXml } from "./series-xml";

const titleXml = (text: string, size: number, isUpright = false): string =>
  `<c:title><c:tx><c:rich><a:bodyPr${isUpright ? ' rot="-5400000" vert="horz"' : ""}/><a:lstStyle/><a:p><a:pPr><a:defRPr sz="${String(size)}" b="1"/></a:pPr><a:r><a:rPr lang="en-GB" sz="${String(size)}" b="1"/><a:t>${escapeText(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;

interface Axis {
  readonly id: number;
  readonly crosses: number;
  readonly side: "b" | "l";
  readonly title: string;
  readonly format: string;
}

/** Labels stay at the edge of the picture, even where figures are negative. */
const axisXml = ({ id, crosses, side, title, format }: Axis): string =>
  `<c:valAx><c:axId val="${String(id)}"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="${side}"/><c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>${titleXml(title, 1000, side === "l")}<c:numFmt formatCode="${escapeAttribute(format)}" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/><c:crossAx val="${String(crosses)}"/><c:crosses val="autoZero"/><c:crossBetween val="midCat"/></c:valAx>`;

const acrossId = 1001;
const upId = 1002;

export function chartXml(chart: Chart): string {
  const format = chart.acrossFormat ?? "General";
  const lines = chart.series.map((series, place) => seriesXml(series, place, format)).join("");
  const across = { id: acrossId, crosses: upId, side: "b", title: chart.acrossTitle } as const;
  const up = { id: upId, crosses: acrossId, side: "l", title: chart.upTitle } as const;
  const plot = `<c:plotArea><c:layout/><c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${lines}<c:axId val="${String(acrossId)}"/><c:axId val="${String(upId)}"/></c:scatterChart>${axisXml({ ...across, format })}${axisXml({ ...up, format: "General" })}</c:plotArea>`;
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<c:chartSpace xmlns:c="${namespaces.chart}" xmlns:a="${namespaces.drawing}" xmlns:r="${namespaces.relationships}"><c:roundedCorners val="0"/><c:chart>${titleXml(chart.title, 1300)}<c:autoTitleDeleted val="0"/>${plot}<c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend><c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart></c:chartSpace>`;
}

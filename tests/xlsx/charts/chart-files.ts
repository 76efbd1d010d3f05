/**
 * Workbooks with charts, put together by hand as the standard has them (ECMA-376 part 1, 20.5 and 21.2), and
 * not as our own writer would: other prefixes, other orders, things left out.
 */
import { main, office, partsWith, type Parts, sheetOf, zipped } from "../files";

const chartSpace = "http://schemas.openxmlformats.org/drawingml/2006/chart";
const drawingSpace = "http://schemas.openxmlformats.org/drawingml/2006/main";
const sheetDrawing = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const packaged = "http://schemas.openxmlformats.org/package/2006";

interface Prefixes {
  /** Of the chart's own elements: "c:", "" ... */
  readonly chart: string;
  readonly drawing: string;
}

const usualPrefixes: Prefixes = { chart: "c:", drawing: "a:" };

const declared = (prefix: string, space: string): string =>
  prefix === "" ? ` xmlns="${space}"` : ` xmlns:${prefix.replace(":", "")}="${space}"`;

/** Written with c: and a:, and then given the prefixes that are wanted. */
export function chartPart(inside: string, { chart, drawing }: Prefixes = usualPrefixes): string {
  const renamed = inside
    .replace(/<(\/?)c:/g, `<$1${chart === "" ? "" : chart}`)
    .replace(/<(\/?)a:/g, `<$1${drawing}`);
  return `<?xml version="1.0" encoding="UTF-8"?><${chart}chartSpace${declared(chart, chartSpace)}${declared(drawing, drawingSpace)} xmlns:r="${office}">${renamed}</${chart}chartSpace>`;
}

const values = (tag: string, refers: string, points: string, count: number): string =>
  `<c:${tag}><c:numRef><c:f>${refers}</c:f><c:numCache><c:formatCode>0.0</c:formatCode><c:ptCount val="${String(count)}"/>${points}</c:numCache></c:numRef></c:${tag}>`;

export const figures = (
  tag: "val" | "xVal" | "yVal" | "cat",
  refers: string,
  given: readonly (number | string | undefined)[],
): string =>
  values(
    tag,
    refers,
    given
      .map((value, index) =>
        value === undefined
          ? ""
          : `<c:pt idx="${String(index)}"><c:v>${String(value)}</c:v></c:pt>`,
      )
      .join(""),
    given.length,
  );

export const words = (tag: "cat" | "tx", refers: string, given: readonly string[]): string =>
  `<c:${tag}><c:strRef><c:f>${refers}</c:f><c:strCache><c:ptCount val="${String(given.length)}"/>${given
    .map((text, index) => `<c:pt idx="${String(index)}"><c:v>${text}</c:v></c:pt>`)
    .join("")}</c:strCache></c:strRef></c:${tag}>`;

export const written = (text: string): string =>
  `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:r><a:t>${text}</a:t></a:r></a:p></c:rich></c:tx></c:title>`;

export const axis = (kind: string, number: number, side: string, more = "", before = ""): string =>
  `<c:${kind}><c:axId val="${String(number)}"/><c:scaling>${before}<c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="${side}"/>${more}<c:crossAx val="${String(3 - number)}"/></c:${kind}>`;

export interface Anchored {
  readonly part: string;
  readonly name?: string;
  readonly description?: string;
  /** Row, column of the first cell and of the last. */
  readonly over?: readonly [number, number, number, number];
  /** Instead of the usual one: everything inside the drawing for this chart. */
  readonly anchor?: (frame: string) => string;
}

const corner = (name: string, row: number, column: number): string =>
  `<xdr:${name}><xdr:col>${String(column)}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${String(row)}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;

function anchorOf(chart: Anchored, index: number): string {
  const [top, left, bottom, right] = chart.over ?? [index * 16, 4, index * 16 + 15, 12];
  const id = String(index + 1);
  const description = chart.description === undefined ? "" : ` descr="${chart.description}"`;
  const frame = `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${String(index + 2)}" name="${chart.name ?? `Chart ${id}`}"${description}/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm/><a:graphic><a:graphicData uri="${chartSpace}"><c:chart xmlns:c="${chartSpace}" r:id="rId${id}"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/>`;
  return (
    chart.anchor?.(frame) ??
    `<xdr:twoCellAnchor>${corner("from", top, left)}${corner("to", bottom, right)}${frame}</xdr:twoCellAnchor>`
  );
}

/** The parts of a workbook whose one sheet, "Data", holds the rows and shows the charts. */
export function chartParts(rows: string, charts: readonly Anchored[]): Parts {
  const sheet = sheetOf(rows, `<drawing r:id="rId1"/>`);
  const relation = (id: number, type: string, target: string) =>
    `<Relationship Id="rId${String(id)}" Type="${office}/${type}" Target="${target}"/>`;
  const relations = (inside: string) =>
    `<Relationships xmlns="${packaged}/relationships">${inside}</Relationships>`;
  const plain = partsWith(sheet);
  const types = charts
    .map(
      (_, index) =>
        `<Override PartName="/xl/charts/chart${String(index + 1)}.xml" ContentType="application/vnd.openxmlformats-officedocument.drawingml.chart+xml"/>`,
    )
    .join("");
  const drawingType = `<Override PartName="/xl/drawings/drawing1.xml" ContentType="application/vnd.openxmlformats-officedocument.drawing+xml"/>`;
  return {
    ...plain,
    "[Content_Types].xml": (plain["[Content_Types].xml"] ?? "").replace(
      "</Types>",
      `${drawingType}${types}</Types>`,
    ),
    "xl/worksheets/_rels/sheet1.xml.rels": relations(
      relation(1, "drawing", "../drawings/drawing1.xml"),
    ),
    "xl/drawings/drawing1.xml": `<xdr:wsDr xmlns:xdr="${sheetDrawing}" xmlns:a="${drawingSpace}" xmlns:r="${office}" xmlns:x="${main}">${charts.map(anchorOf).join("")}</xdr:wsDr>`,
    "xl/drawings/_rels/drawing1.xml.rels": relations(
      charts
        .map((_, index) => relation(index + 1, "chart", `../charts/chart${String(index + 1)}.xml`))
        .join(""),
    ),
    ...Object.fromEntries(
      charts.map(({ part }, index) => [`xl/charts/chart${String(index + 1)}.xml`, part]),
    ),
  };
}

export const chartBook = (rows: string, charts: readonly Anchored[]): Uint8Array =>
  zipped(chartParts(rows, charts));

const cell = (name: string, value: number | string): string =>
  typeof value === "number"
    ? `<c r="${name}"><v>${String(value)}</v></c>`
    : `<c r="${name}" t="inlineStr"><is><t>${value}</t></is></c>`;

/** Rows of cells from A1 on. */
export const rowsOf = (table: readonly (readonly (number | string)[])[]): string =>
  table
    .map((row, index) => {
      const number = String(index + 1);
      const cells = row.map((value, column) =>
        value === "" ? "" : cell(`${String.fromCharCode(65 + column)}${number}`, value),
      );
      return `<row r="${number}">${cells.join("")}</row>`;
    })
    .join("");

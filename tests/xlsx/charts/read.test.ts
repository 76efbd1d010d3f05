/** Charts of files as plain values: written by hand, by LibreOffice, and by nobody sound. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { isFileProblem, newXlsx, patchXlsx, sayFile } from "../../../src/xlsx";
import { chartsIn } from "../../../src/xlsx/charts";
import type { FileChart } from "../../../src/xlsx/file-chart";
import { root } from "../../rules/sources-of";
import { opened } from "../answers";
import { made, zipped } from "../files";
import {
  type Anchored,
  axis,
  chartBook,
  chartPart,
  chartParts,
  figures,
  words,
  written,
} from "./chart-files";
import { barPart, columnPart, linePart, piePart, quayCharts, quayRows, scatterPart } from "./quay";

const chartsOf = (bytes: Uint8Array): FileChart[] => chartsIn(opened(bytes));

const one = (inside: string, more: Partial<Anchored> = {}): FileChart => {
  const [chart] = chartsOf(chartBook(quayRows, [{ part: chartPart(inside), ...more }]));
  if (!chart) throw new Error("There is no chart.");
  return chart;
};

const plot = (inside: string): string =>
  `<c:chart><c:plotArea>${inside}${axis("catAx", 1, "b")}${axis("valAx", 2, "l")}</c:plotArea></c:chart>`;
const line = (series: string): string =>
  plot(`<c:lineChart>${series}<c:axId val="1"/><c:axId val="2"/></c:lineChart>`);

const firstSeries = (chart: FileChart) => chart.picture?.groups[0]?.series[0];

/** What two programs must agree on. */
const essence = ({ kind, picture }: FileChart) => ({
  kind,
  // a title that is left to the program is the name of the only series
  title:
    picture?.title?.text ??
    (picture?.isNamedBySeries ? picture.groups[0]?.series[0]?.name?.text : undefined),
  groups: picture?.groups.map((group) => ({
    kind: group.kind,
    stacking: group.stacking,
    series: group.series.map(({ name, across, up }) => ({
      name: name?.refersTo,
      across: across?.refersTo?.replaceAll("'", ""),
      up: [up.refersTo?.replaceAll("'", ""), ...up.values],
    })),
  })),
  titles: picture?.axes.map(({ title }) => title?.text),
});

describe("charts of a file", () => {
  it("are read with their places, titles, series and axes", () => {
    const [oil, acid, points, shares, slices] = chartsOf(chartBook(quayRows, quayCharts));
    expect(oil).toMatchObject({
      sheet: "Data",
      name: "Oil",
      kind: "column",
      anchor: { from: { row: 0, column: 5 }, to: { row: 15, column: 12 } },
      picture: { title: { text: "Oil by kitchen" }, legend: "b", leavesHidden: true },
    });
    expect(oil && firstSeries(oil)).toMatchObject({
      name: { text: "Litres", refersTo: "Data!$B$1" },
      across: { values: ["North Quay", "Slipway", "Tidewheel", "Ferry galley"] },
      up: { refersTo: "Data!$B$2:$B$5", values: [120, 200, 60, 90], format: "0.0" },
    });
    expect(acid?.picture?.axes.map(({ kind, title }) => [kind, title?.text])).toEqual([
      ["dates", "Day"],
      ["figures", "mg KOH/g"],
    ]);
    expect(points?.picture).toMatchObject({ isNamedBySeries: true, legend: "r" });
    expect(points && firstSeries(points)?.isJoined).toBe(false);
    expect(shares?.picture?.groups[0]).toMatchObject({ kind: "bar", stacking: "full" });
    expect([slices?.kind, slices?.picture]).toEqual(["pie", undefined]);
  });

  it("are the same whatever their elements' prefixes", () => {
    const parts = [columnPart, linePart, scatterPart, barPart, piePart];
    const usual = parts.map((part) => one(part));
    fc.assert(
      fc.property(
        fc.constantFrom("c:", "", "chart:", "x-1:"),
        fc.constantFrom("a:", "d:", "main:"),
        fc.nat({ max: parts.length - 1 }),
        (chart, drawing, index) => {
          const part = chartPart(parts[index] ?? "", { chart, drawing });
          expect(chartsOf(chartBook(quayRows, [{ part }]))).toEqual([usual[index]]);
        },
      ),
      { numRuns: 30 },
    );
  });

  it("are the same when LibreOffice wrote them anew", () => {
    const path = join(root, "tests/xlsx/charts/libreoffice.xlsx");
    const theirs = chartsOf(new Uint8Array(readFileSync(path)));
    const ours = chartsOf(chartBook(quayRows, quayCharts));
    expect(theirs.map(essence)).toEqual(ours.map(essence));
  });

  it("are read where XlsxWriter and openpyxl made them", () => {
    const found = ["charts", "office"].flatMap((name) => chartsOf(made(name)));
    expect(found.length).toBeGreaterThan(1);
    expect(found.every(({ picture, kind }) => picture !== undefined && kind !== "damaged")).toBe(
      true,
    );
    expect(found.map(({ picture }) => picture?.title?.text)).toContain("Titre by lot");
  });

  it("are read where we made them", () => {
    const bytes = newXlsx(sampleLogbook());
    if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
    const own = sampleLogbook().sheets.flatMap(({ charts, name }) =>
      (charts ?? []).map((chart) => ({ sheet: name, ...chart })),
    );
    const found = chartsOf(bytes);
    expect(
      found.map(({ sheet, description, picture }) => [sheet, description, picture?.title?.text]),
    ).toEqual(own.map(({ sheet, description, title }) => [sheet, description, title]));
    expect(found[0]?.picture?.groups[0]?.series.length).toBe(own[0]?.series.length);
  });

  it("stay byte for byte, and those that cannot be read keep nobody from the file", () => {
    const broken = ["", "<c:chartSpace", "<x/>", chartPart("<c:chart/>")];
    const bytes = chartBook(
      quayRows,
      broken.map((part) => ({ part })),
    );
    expect(chartsOf(bytes).map(({ kind }) => kind)).toEqual([
      "damaged",
      "damaged",
      "newer",
      "empty",
    ]);
    expect(patchXlsx(opened(bytes), [])).toEqual(bytes);
    const parts = chartParts(quayRows, quayCharts);
    const lost = { ...parts, "xl/drawings/drawing1.xml": "<broken" };
    expect(chartsOf(zipped(lost))).toEqual([]);
  });

  it("never stop the reading, wherever a part was cut off or written over", () => {
    const parts = [columnPart, linePart, scatterPart, barPart].map((part) => chartPart(part));
    fc.assert(
      fc.property(
        fc.constantFrom(...parts),
        fc.nat(),
        fc.string({ maxLength: 6 }),
        fc.nat({ max: 12 }),
        (part, at, put, gone) => {
          const from = at % part.length;
          const changed = part.slice(0, from) + put + part.slice(from + gone);
          const found = chartsOf(chartBook(quayRows, [{ part: changed }, { part }]));
          expect(found.length).toBe(2);
          expect(found[1]?.picture).toBeDefined();
        },
      ),
      { numRuns: 150 },
    );
  });

  it("have no figure where a point is an error, is left out or has no sound place", () => {
    const cache = `<c:ptCount val="1e9"/><c:pt idx="0"><c:v>#N/A</c:v></c:pt><c:pt idx="2"><c:v>4.5</c:v></c:pt><c:pt idx="-1"><c:v>1</c:v></c:pt><c:pt idx="99999999"><c:v>1</c:v></c:pt><c:pt><c:v>7</c:v></c:pt>`;
    const chart = one(
      line(
        `<c:ser><c:val><c:numRef><c:f>Data!$B$2:$B$9</c:f><c:numCache>${cache}</c:numCache></c:numRef></c:val></c:ser>`,
      ),
    );
    expect(Array.from(firstSeries(chart)?.up.values ?? [])).toEqual([undefined, undefined, 4.5]);
  });

  it("keep a series without a cache or without points, and leave one without figures out", () => {
    const chart = one(
      line(
        `<c:ser><c:val><c:numRef><c:f>Data!$B$2:$B$5</c:f></c:numRef></c:val></c:ser><c:ser/><c:ser><c:val><c:numLit><c:ptCount val="2"/><c:pt idx="1"><c:v>3</c:v></c:pt></c:numLit></c:val></c:ser><c:ser><c:val/></c:ser>`,
      ),
    );
    expect(
      chart.picture?.groups[0]?.series.map(({ up }) => [up.refersTo, up.values.length]),
    ).toEqual([
      ["Data!$B$2:$B$5", 0],
      [undefined, 2],
    ]);
  });

  it("take the innermost of several levels of categories", () => {
    const levels = `<c:cat><c:multiLvlStrRef><c:f>Data!$A$2:$B$3</c:f><c:multiLvlStrCache><c:lvl><c:pt idx="0"><c:v>drum</c:v></c:pt></c:lvl><c:lvl><c:pt idx="0"><c:v>quay</c:v></c:pt></c:lvl></c:multiLvlStrCache></c:multiLvlStrRef></c:cat>`;
    const chart = one(line(`<c:ser>${levels}${figures("val", "Data!$B$2:$B$3", [1, 2])}</c:ser>`));
    expect(firstSeries(chart)?.across).toEqual({ refersTo: "Data!$A$2:$B$3", values: ["drum"] });
  });

  it("say what their axes are bound to, and nothing where they do not", () => {
    const bound = `<c:max val="10"/><c:min val="-2"/><c:logBase val="10"/>`;
    const chart = one(
      `<c:chart><c:plotArea><c:lineChart><c:ser>${words("cat", "Data!$A$2:$A$3", ["a", "b"])}${figures("val", "Data!$B$2:$B$3", [1, 2])}</c:ser><c:axId val="1"/><c:axId val="2"/></c:lineChart>${axis("catAx", 1, "b")}${axis("valAx", 2, "r", `${written("g")}<c:numFmt formatCode="0.00" sourceLinked="0"/><c:majorUnit val="2"/>`, bound)}</c:plotArea></c:chart>`,
    );
    expect(chart.picture?.axes[1]).toEqual({
      number: "2",
      kind: "figures",
      side: "r",
      title: { text: "g" },
      format: "0.00",
      isHidden: false,
      hasLines: false,
      least: -2,
      most: 10,
      step: 2,
      base: 10,
      isReversed: false,
    });
    expect(chart.picture?.axes[0]).not.toHaveProperty("least");
    expect(chart.picture?.legend).toBeUndefined();
  });

  it("lie where their anchors say, of whichever kind, and within a sheet", () => {
    const from = `<xdr:from><xdr:col>2</xdr:col><xdr:colOff>95250</xdr:colOff><xdr:row>99999999</xdr:row><xdr:rowOff>-5</xdr:rowOff></xdr:from>`;
    const extent = `<xdr:ext cx="1905000" cy="952500"/>`;
    const anchorOf = (anchor: Anchored["anchor"]) =>
      one(columnPart, { ...(anchor ? { anchor } : {}), description: "Oil &amp; quays" });
    // 9525 units are a pixel
    expect(
      anchorOf((frame) => `<xdr:oneCellAnchor>${from}${extent}${frame}</xdr:oneCellAnchor>`),
    ).toMatchObject({
      description: "Oil & quays",
      anchor: {
        from: { column: 2, x: 10, row: 1_048_575, y: 0 },
        size: { width: 200, height: 100 },
      },
    });
    expect(
      anchorOf(
        (frame) =>
          `<xdr:absoluteAnchor><xdr:pos x="190500" y="9525"/>${extent}${frame}</xdr:absoluteAnchor>`,
      ).anchor,
    ).toEqual({
      from: { row: 0, column: 0, x: 20, y: 1 },
      size: { width: 200, height: 100 },
    });
  });

  it("of the newer kinds say which they are", () => {
    const part = `<cx:chartSpace xmlns:cx="http://schemas.microsoft.com/office/drawing/2014/chartex"><cx:chart><cx:plotArea><cx:plotAreaRegion><cx:series layoutId="waterfall"/></cx:plotAreaRegion></cx:plotArea></cx:chart></cx:chartSpace>`;
    const [chart] = chartsOf(chartBook(quayRows, [{ part }]));
    expect([chart?.kind, chart?.picture]).toEqual(["waterfall", undefined]);
  });
});

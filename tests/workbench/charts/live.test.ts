/** Charts with what their cells hold, where they lie on the screen, and what is said of them. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { newXlsx, openXlsx, type Workbook } from "../../../src/xlsx";
import { chartsIn } from "../../../src/xlsx/charts";
import type { ChartPicture, FileChart } from "../../../src/xlsx/file-chart";
import { blocksNamed } from "../../../src/workbench/charts/blocks-named";
import { type ChartCells, livePicture } from "../../../src/workbench/charts/live";
import { chartsOfBook } from "../../../src/workbench/charts/of-book";
import { type Geometry, panesOf, rectOf } from "../../../src/workbench/charts/places";
import { chartWords, notDrawnWords } from "../../../src/workbench/charts/words";
import { errorCell, type GivenCell } from "../../../src/workbench/engine/cells";
import { chartBook } from "../../xlsx/charts/chart-files";
import { quayCharts, quayRows, quayTable } from "../../xlsx/charts/quay";

const quay = chartsIn(openXlsx(chartBook(quayRows, quayCharts)) as Workbook);

const named = (name: string): FileChart & { readonly picture: ChartPicture } => {
  const chart = quay.find((each) => each.name === name);
  if (!chart?.picture) throw new Error(`There is no drawn chart ${name}.`);
  return { ...chart, picture: chart.picture };
};

/** The table of the quay, with some of its cells other than they were. */
const cellsWith = (
  changed: Readonly<Record<string, GivenCell>> = {},
  more: Partial<ChartCells> = {},
): ChartCells => ({
  extent: (sheet) => (sheet === "Data" ? { rows: 5, columns: 4 } : undefined),
  value: (_, row, column) => {
    const key = `${String(row)},${String(column)}`;
    return key in changed ? (changed[key] ?? null) : (quayTable[row]?.[column] ?? null);
  },
  format: () => undefined,
  isHidden: () => false,
  lookup: () => undefined,
  ...more,
});

const litres = (picture: ChartPicture) => picture.groups[0]?.series[0]?.up.values;

describe("a chart with what its cells hold", () => {
  const { picture } = named("Oil");

  it("follows an edit, in figures, names and categories", () => {
    const now = livePicture(picture, cellsWith({ "1,1": 77, "0,1": "Gallons", "4,0": "Galley" }));
    expect(litres(now)).toEqual([77, 200, 60, 90]);
    expect(now.groups[0]?.series[0]?.name?.text).toBe("Gallons");
    expect(now.groups[0]?.series[1]?.across?.values.at(-1)).toBe("Galley");
  });

  it("has gaps where cells hold an error, nothing or an empty text, and 1 and 0 for yes and no", () => {
    const cells = cellsWith({ "1,1": errorCell("#N/A"), "2,1": null, "3,1": "", "4,1": true });
    expect(litres(livePicture(picture, cells))).toEqual([undefined, undefined, undefined, 1]);
  });

  it("leaves hidden rows out, where it says so", () => {
    const cells = cellsWith({}, { isHidden: (_, row) => row === 2 });
    expect(litres(livePicture(picture, cells))).toEqual([120, 60, 90]);
    expect(litres(livePicture({ ...picture, leavesHidden: false }, cells))?.length).toBe(4);
  });

  it("keeps what the file last saw where the cells are in no sheet of the workbook", () => {
    const gone = cellsWith({ "1,1": 77 }, { extent: () => undefined });
    expect(litres(livePicture(picture, gone))).toEqual([120, 200, 60, 90]);
  });

  it("asks for what a name comes to", () => {
    const series = (picture.groups[0]?.series ?? []).map((each) => ({
      ...each,
      up: { ...each.up, refersTo: "Data!Litres_now" },
    }));
    const group = { ...(picture.groups[0] as ChartPicture["groups"][number]), series };
    const cells = cellsWith(
      {},
      { lookup: (name) => (name === "Litres_now" ? [[1], [2]] : undefined) },
    );
    expect(litres(livePicture({ ...picture, groups: [group] }, cells))).toEqual([1, 2]);
  });

  it("reads references as files write them, and nothing else", () => {
    expect(blocksNamed("'Bob''s, log'!$B$2:$B$4")).toEqual([
      { sheet: "Bob's, log", row: 1, column: 1, rows: 3, columns: 1 },
    ]);
    expect(blocksNamed("(Data!$A$1,'Data'!$C$3:$D$3)")?.map(({ columns }) => columns)).toEqual([
      1, 2,
    ]);
    expect(blocksNamed("Data!$B:$B")?.[0]).toMatchObject({ row: 0, rows: 1_048_576 });
    for (const none of ["#REF!", "Data!#REF!", "[1]Data!$A$1", "Litres", "", "Data!$A$1:$B"]) {
      expect(blocksNamed(none)).toBeUndefined();
    }
  });

  it("is the same of a book of ours and of its file", () => {
    const book = sampleLogbook();
    const file = chartsIn(openXlsx(newXlsx(book) as Uint8Array) as Workbook);
    const essence = ({ sheet, anchor, description, picture: drawn }: FileChart) => ({
      sheet,
      anchor,
      description,
      title: drawn?.title?.text,
      axes: drawn?.axes.map(({ side, title, kind }) => [side, title?.text, kind]),
      cells: drawn?.groups[0]?.series.map(({ name, across, up }) =>
        [name, across, up].map((each) => each?.refersTo),
      ),
    });
    expect(chartsOfBook(book).map(essence)).toEqual(file.map(essence));
  });

  it("is told with its title, kind, series and their ranges; others with what becomes of them", () => {
    expect(chartWords(named("Acid"), named("Acid").picture)).toBe(
      "Line chart: Acid value by day. Acid value, 4 points, 1.3 to 7.8. Across: Day 2026-09-07 to 2026-09-22.",
    );
    const said = { ...named("Oil"), description: "Slipway brings most" };
    expect(chartWords(said, said.picture)).toMatch(
      /^Column chart: Oil by kitchen\. Slipway brings most\. Litres/,
    );
    const other = { sheet: "", anchor: { from: { row: 0, column: 0, x: 0, y: 0 } } };
    expect(notDrawnWords({ ...other, name: "Slices", kind: "area" })).toBe(
      "An area chart called Slices is in the file and stays; it is not drawn here.",
    );
    expect(notDrawnWords({ ...other, name: "", kind: "damaged" })).toBe(
      "A chart is in the file and stays; it cannot be read, and is not drawn here.",
    );
  });
});

describe("where a chart lies", () => {
  const lines = { left: (column: number) => column * 50, top: (row: number) => row * 20 };

  it("is from cell to cell, and no further into one than that is wide", () => {
    const from = { row: 2, column: 1, x: 10, y: 5 };
    expect(rectOf({ from, to: { row: 4, column: 3, x: 500, y: 0 } }, lines)).toEqual({
      left: 60,
      top: 45,
      // column 3 ends at 200
      width: 140,
      height: 35,
    });
    expect(rectOf({ from, size: { width: 30, height: 40 } }, lines)).toMatchObject({
      width: 30,
      height: 40,
    });
  });

  const geometry: Geometry = {
    zoom: 1,
    headerWidth: 46,
    headerHeight: 20,
    scrollX: 0,
    scrollY: 0,
    frozenLeft: 0,
    frozenWidth: 0,
    frozenTop: 0,
    frozenHeight: 0,
    width: 800,
    height: 600,
  };

  it("moves with the sheet, and stays where rows or columns are frozen", () => {
    expect(panesOf(geometry)).toMatchObject([{ x: 0, y: 0, clip: { left: 46, top: 20 } }]);
    const frozen = { ...geometry, frozenHeight: 60, frozenWidth: 100, scrollX: 30, scrollY: 200 };
    const panes = panesOf(frozen);
    expect(panes.map(({ name }) => name)).toEqual([
      "frozen-frozen",
      "frozen-moving",
      "moving-frozen",
      "moving-moving",
    ]);
    // the moving one begins below 20 + 60 and right of 46 + 100; a cell at 0 stands 200 and 30 before
    expect(panes[3]).toMatchObject({ clip: { left: 146, top: 80 }, x: -130, y: -260 });
    expect(panes[0]).toMatchObject({ clip: { left: 46, top: 20 }, x: 0, y: 0 });
  });

  it("covers the window between the headings once, whatever is frozen and however it is enlarged", () => {
    const length = fc.integer({ min: 0, max: 900 });
    fc.assert(
      fc.property(
        fc.record({
          ...Object.fromEntries(
            ["scrollX", "scrollY", "frozenLeft", "frozenTop", "frozenWidth", "frozenHeight"].map(
              (name) => [name, length] as const,
            ),
          ),
          zoom: fc.constantFrom(0.4, 1, 1.5, 4),
        }),
        (given) => {
          const panes = panesOf({ ...geometry, ...(given as Partial<Geometry>) });
          const area = panes.reduce((sum, { clip }) => sum + clip.width * clip.height, 0);
          const zoom = given.zoom as number;
          const whole = Math.max(0, 800 - 46 * zoom) * Math.max(0, 600 - 20 * zoom);
          expect(area).toBeCloseTo(whole, 3);
        },
      ),
    );
  });
});

import { describe, expect, it } from "vitest";
import type { Book } from "../../src/sheet/book";
import { type Edit, isFileProblem, newXlsx, patchXlsx, sayFile } from "../../src/xlsx";
import { codeOf, opened, patched } from "./answers";
import { bookOf, made, partsOf } from "./files";

const cells = (column: number, rows: number) => ({
  sheet: "Bob's <log>",
  row: 1,
  column,
  rows,
  columns: 1,
});

const book: Book = {
  name: "Chart",
  sheets: [
    {
      name: "Bob's <log>",
      rows: [
        [{ value: "Litres" }, { value: "Lye & more" }],
        [{ value: 20 }, { formula: "=A2*2", results: [[40]] }],
        [{ value: 40 }, { formula: "=NA()", results: [[{ error: "#N/A" }]] }],
        [{ value: 60 }, { formula: "=SEQUENCE(2)", results: [[120], [160]] }],
        [{ value: 80 }, null],
      ],
      columnWidths: [],
      tables: [],
      frozenRows: 0,
      charts: [
        {
          title: "Lye <g>",
          description: 'Two "lines"',
          acrossTitle: "Batch, L",
          upTitle: "Lye, g",
          over: { row: 1, column: 3, rows: 10, columns: 5 },
          series: [
            {
              name: { sheet: "Bob's <log>", row: 0, column: 1 },
              across: cells(0, 4),
              up: cells(1, 4),
            },
          ],
        },
      ],
    },
  ],
};

function bytesOf(given: Book): Uint8Array {
  const found = newXlsx(given);
  if (isFileProblem(found)) throw new Error(sayFile(found));
  return found;
}

const chartEdit = (sheet: string): Edit => ({
  do: "add-chart",
  sheet,
  title: "New",
  description: "A new chart",
  acrossTitle: "x",
  upTitle: "y",
  over: { row: 20, column: 0, rows: 5, columns: 5 },
  series: [],
});

describe("a chart of a book of our own", () => {
  const parts = partsOf(bytesOf(book));
  const chart = parts["xl/charts/chart1.xml"] ?? "";

  it("names its cells and holds what they come to, but for errors", () => {
    expect(chart).toContain("<c:f>'Bob''s &lt;log&gt;'!$B$1</c:f>");
    expect(chart).toContain("<c:v>Lye &amp; more</c:v>");
    expect(chart).toContain(
      "<c:f>'Bob''s &lt;log&gt;'!$B$2:$B$5</c:f><c:numCache><c:formatCode>General</c:formatCode>" +
        '<c:ptCount val="4"/><c:pt idx="0"><c:v>40</c:v></c:pt><c:pt idx="2"><c:v>120</c:v></c:pt>' +
        '<c:pt idx="3"><c:v>160</c:v></c:pt></c:numCache>',
    );
  });

  it("has a title, titles of its axes, a legend and words for those who cannot see it", () => {
    for (const text of ["Lye &lt;g&gt;", "Batch, L", "Lye, g"]) {
      expect(chart).toContain(`<a:t>${text}</a:t>`);
    }
    expect(chart).toContain('<c:legend><c:legendPos val="b"/>');
    expect(parts["xl/drawings/drawing1.xml"]).toContain('descr="Two &quot;lines&quot;"');
  });

  it("is led to from its sheet, and every part says what it is", () => {
    expect(parts["xl/worksheets/sheet1.xml"]).toMatch(
      /<pageMargins[^>]*\/><drawing [^>]*r:id="rId1"\/>/,
    );
    expect(parts["xl/worksheets/_rels/sheet1.xml.rels"]).toContain(
      'Target="/xl/drawings/drawing1.xml"',
    );
    expect(parts["xl/drawings/_rels/drawing1.xml.rels"]).toContain(
      'Target="/xl/charts/chart1.xml"',
    );
    expect(parts["[Content_Types].xml"]).toContain(
      'PartName="/xl/charts/chart1.xml" ContentType="application/vnd.openxmlformats-officedocument.drawingml.chart+xml"',
    );
    expect(opened(bytesOf(book)).kept).toContainEqual({
      what: "charts",
      sheet: "Bob's <log>",
      count: 1,
    });
  });
});

describe("a chart added to somebody's sheet", () => {
  it("stands beside those that are there, which stay as they are", () => {
    const before = partsOf(made("charts"));
    const drawing = "xl/drawings/drawing1.xml";
    const after = partsOf(patched(made("charts"), [chartEdit("Log book")]));
    for (const [name, text] of Object.entries(before)) {
      if (name.startsWith("xl/charts/") || name.startsWith("xl/worksheets/sheet")) {
        expect(after[name], name).toBe(text);
      }
    }
    const anchors = (text = "") => text.match(/<xdr:twoCellAnchor\b/g)?.length ?? 0;
    expect(anchors(after[drawing])).toBe(anchors(before[drawing]) + 1);
    const ids = [...(after[drawing] ?? "").matchAll(/<xdr:cNvPr id="(\d+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("is refused outside the sheet", () => {
    const edit = {
      ...chartEdit("Data"),
      over: { row: -1, column: 0, rows: 5, columns: 5 },
    } as Edit;
    expect(codeOf(patchXlsx(bookOf(""), [edit]))).toBe("outside-sheet");
  });
});

describe("help and heights", () => {
  it("are shown beside cells, with words to choose from or without", () => {
    const area = { row: 1, column: 0, rows: 3, columns: 1 };
    const edits: Edit[] = [
      { do: "offer-words", sheet: "Data", area, words: [], help: 'Litres, "l"' },
      { do: "set-height", sheet: "Data", row: 4, points: 30 },
      { do: "set-height", sheet: "Data", row: 0, points: 20.5 },
    ];
    const xml =
      partsOf(patched(bookOf('<row r="1"><c r="A1"><v>1</v></c></row>'), edits))[
        "xl/worksheets/sheet1.xml"
      ] ?? "";
    expect(xml).toContain(
      '<dataValidation allowBlank="1" showInputMessage="1" showErrorMessage="0" prompt="Litres, &quot;l&quot;" sqref="A2:A4"/>',
    );
    expect(xml).toContain(
      '<row r="1" ht="20.5" customHeight="1"><c r="A1"><v>1</v></c></row><row r="5" ht="30" customHeight="1"></row>',
    );
  });

  it("are refused where a row cannot be so high", () => {
    const edit: Edit = { do: "set-height", sheet: "Data", row: 0, points: 410 };
    expect(codeOf(patchXlsx(bookOf(""), [edit]))).toBe("bad-height");
  });
});

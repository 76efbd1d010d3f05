/** Each kind of part that holds references, as files write it; what it is to be is worked out by hand. */
import { describe, expect, it } from "vitest";
import { isFileProblem, sayFile } from "../../../src/xlsx";
import { restructured } from "../../../src/xlsx/structure";
import type { LinesAct } from "../../../src/xlsx/structure/act";
import { opened } from "../answers";
import { office, partsOf, partsWith, sheetOf, zipped, type Parts } from "../files";

const insertRow: LinesAct = { do: "insert-rows", sheet: "Data", before: 2, count: 1 };
const deleteRow: LinesAct = { do: "delete-rows", sheet: "Data", first: 2, count: 1 };
const insertColumn: LinesAct = { do: "insert-columns", sheet: "Data", before: 1, count: 1 };

function after(parts: Parts, act: LinesAct): Parts {
  const made = restructured(opened(zipped(parts)), act);
  if (isFileProblem(made)) throw new Error(`${sayFile(made)} ${JSON.stringify(made.fields)}`);
  return partsOf(made.file.bytes);
}

function troubleOf(parts: Parts, act: LinesAct): unknown {
  const made = restructured(opened(zipped(parts)), act);
  return isFileProblem(made) && "trouble" in made.fields ? made.fields.trouble : "none";
}

/** The sheet's part after an act: what stands around its rows, and the rows. */
const sheetAfter = (rows: string, around: string, act: LinesAct, before = ""): string =>
  after(partsWith(sheetOf(rows, around, before)), act)["xl/worksheets/sheet1.xml"] ?? "";

/** Rows 1 to 5 with a figure in A and B. */
const rows = [1, 2, 3, 4, 5]
  .map(
    (row) =>
      `<row r="${row}"><c r="A${row}"><v>${row}</v></c><c r="B${row}"><v>${row * 10}</v></c></row>`,
  )
  .join("");

const related = (...links: (readonly [string, string])[]): string =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${links
    .map(
      ([kind, target], index) =>
        `<Relationship Id="r${index + 1}" Type="${office}/${kind}" Target="${target}"/>`,
    )
    .join("")}</Relationships>`;

const withPart = (kind: string, part: string, xml: string): Parts =>
  partsWith(sheetOf(rows), {
    "xl/worksheets/_rels/sheet1.xml.rels": related([kind, `../${part}`]),
    [`xl/${part}`]: xml,
  });

describe("around the rows of the sheet", () => {
  it.each([
    [
      '<mergeCells count="2"><mergeCell ref="A2:B4"/><mergeCell ref="D3:E3"/></mergeCells>',
      insertRow,
      '<mergeCells count="2"><mergeCell ref="A2:B5"/><mergeCell ref="D4:E4"/></mergeCells>',
    ],
    [
      '<mergeCells count="2"><mergeCell ref="A2:B4"/><mergeCell ref="D3:E3"/></mergeCells>',
      deleteRow,
      '<mergeCells count="1"><mergeCell ref="A2:B3"/></mergeCells>',
    ],
    ['<mergeCells count="1"><mergeCell ref="D2:D3"/></mergeCells>', deleteRow, ""],
    [
      '<hyperlinks><hyperlink ref="A3" location="Data!B4"/><hyperlink ref="A4" location="Data!A3"/></hyperlinks>',
      deleteRow,
      '<hyperlinks><hyperlink ref="A3" location="Data!A3"/></hyperlinks>',
    ],
    [
      '<autoFilter ref="A1:B5"><filterColumn colId="1"><filters><filter val="10"/></filters></filterColumn><sortState ref="A2:B5"><sortCondition ref="B2:B5"/></sortState></autoFilter>',
      insertColumn,
      '<autoFilter ref="A1:C5"><filterColumn colId="2"><filters><filter val="10"/></filters></filterColumn><sortState ref="A2:C5"><sortCondition ref="C2:C5"/></sortState></autoFilter>',
    ],
    [
      '<rowBreaks count="2" manualBreakCount="2"><brk id="2" max="16383" man="1"/><brk id="4" max="16383" man="1"/></rowBreaks>',
      deleteRow,
      '<rowBreaks count="1" manualBreakCount="1"><brk id="3" max="16383" man="1"/></rowBreaks>',
    ],
    [
      '<ignoredErrors><ignoredError sqref="A1 A3:A5" numberStoredAsText="1"/></ignoredErrors>',
      deleteRow,
      '<ignoredErrors><ignoredError sqref="A1 A3:A4" numberStoredAsText="1"/></ignoredErrors>',
    ],
    ['<protectedRanges><protectedRange sqref="A3" name="Open"/></protectedRanges>', deleteRow, ""],
    [
      '<cellWatches><cellWatch r="A4"/></cellWatches>',
      insertRow,
      '<cellWatches><cellWatch r="A5"/></cellWatches>',
    ],
  ] as const)("%s", (around, act, wanted) => {
    expect(sheetAfter(rows, around, act)).toContain(`</sheetData>${wanted}</worksheet>`);
  });

  it("parts a rule whose formula would else say another thing in some of its cells", () => {
    // each cell looks at the one two rows down: those above the new row no longer do so alike
    const rule =
      '<conditionalFormatting sqref="A1:A5"><cfRule type="expression" priority="1"><formula>B3&gt;1</formula></cfRule></conditionalFormatting>';
    const made = sheetAfter(rows, rule, { ...insertRow, before: 3 });
    expect(
      [...made.matchAll(/sqref="([^"]*)"|<formula>([^<]*)/g)].map(([, area, text]) => area ?? text),
    ).toEqual(["A1 A5:A6", "B3&gt;1", "A2:A4", "B5&gt;1"]);
  });

  it("grows validations and formats over a new row between two of theirs, and no further", () => {
    const list =
      '<dataValidations count="2"><dataValidation type="list" sqref="A2:A3"><formula1>$B$1:$B$5</formula1></dataValidation><dataValidation type="list" sqref="B3:B4"><formula1>"a,b"</formula1></dataValidation></dataValidations>';
    expect(sheetAfter(rows, list, insertRow)).toContain(
      '<dataValidation type="list" sqref="A2:A4"><formula1>$B$1:$B$6</formula1></dataValidation><dataValidation type="list" sqref="B4:B5"><formula1>"a,b"</formula1>',
    );
  });

  it("moves rules of the newer kind, and lines in cells", () => {
    const newer =
      '<extLst><ext uri="x" xmlns:x14="urn:x14" xmlns:xm="urn:xm"><x14:conditionalFormattings><x14:conditionalFormatting><x14:cfRule type="expression" id="{1}"><xm:f>Data!$A$4&gt;1</xm:f></x14:cfRule><xm:sqref>B4:B5</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings></ext><ext uri="y" xmlns:x14="urn:x14" xmlns:xm="urn:xm"><x14:sparklineGroups><x14:sparklineGroup><x14:sparklines><x14:sparkline><xm:f>Data!A1:A4</xm:f><xm:sqref>C3</xm:sqref></x14:sparkline><x14:sparkline><xm:f>Data!B1:B4</xm:f><xm:sqref>C4</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst>';
    const made = sheetAfter(rows, newer, deleteRow);
    expect(made).toContain("<xm:f>Data!$A$3&gt;1</xm:f></x14:cfRule><xm:sqref>B3:B4</xm:sqref>");
    expect(made).toContain(
      "<x14:sparklines><x14:sparkline><xm:f>Data!B1:B3</xm:f><xm:sqref>C3</xm:sqref></x14:sparkline></x14:sparklines>",
    );
  });

  it("keeps the frozen rows frozen, with one put in among them", () => {
    const view =
      '<sheetViews><sheetView workbookViewId="0"><pane ySplit="3" topLeftCell="A4" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft" activeCell="B5" sqref="B5"/></sheetView></sheetViews>';
    expect(sheetAfter(rows, "", insertRow, view)).toContain(
      '<pane ySplit="4" topLeftCell="A5" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft" activeCell="B6" sqref="B6"/>',
    );
    const all: LinesAct = { do: "delete-rows", sheet: "Data", first: 0, count: 3 };
    expect(sheetAfter(rows, "", all, view)).toContain('<sheetView workbookViewId="0"></sheetView>');
  });

  it("gives new columns the width of the one before them", () => {
    const cols =
      '<cols><col min="1" max="1" width="20" customWidth="1"/><col min="2" max="3" width="9"/></cols>';
    expect(sheetAfter(rows, "", insertColumn, cols)).toContain(
      '<cols><col min="1" max="2" width="20" customWidth="1"/><col min="3" max="4" width="9"/></cols>',
    );
  });
});

describe("the rows", () => {
  it("look like the row above them", () => {
    const styled =
      '<row r="2" ht="30" customHeight="1"><c r="A2" s="0"/><c r="C2"><f>A2*2</f><v>4</v></c></row><row r="3"><c r="A3"><f>A2</f></c></row>';
    expect(sheetAfter(styled, "", insertRow)).toContain(
      '</row><row r="3" ht="30" customHeight="1"></row><row r="4"><c r="A4"><f>A2</f>',
    );
  });

  it("share a formula as long as it says the same in all of its cells", () => {
    const shared = (first: string): string =>
      [2, 3, 4]
        .map(
          (row) =>
            `<row r="${row}"><c r="C${row}"><f t="shared"${row === 2 ? ' ref="C2:C4"' : ""} si="0"${row === 2 ? `>${first}</f>` : "/>"}<v>0</v></c></row>`,
        )
        .join("");
    // all in one row: moved, and still the same
    expect(sheetAfter(shared("A2*$B$5"), "", insertRow)).toContain(
      '<f t="shared" ref="C2:C5" si="0">A2*$B$6</f>',
    );
    expect(sheetAfter(shared("A2*$B$5"), "", insertRow)).toContain(
      '<c r="C5"><f t="shared" si="0"/>',
    );
    // from the row above: the cell below the new row now looks two rows up
    const made = sheetAfter(shared("A1"), "", insertRow);
    expect([...made.matchAll(/<f>([^<]*)<\/f>/g)].map(([, text]) => text)).toEqual([
      "A1",
      "A2",
      "A4",
    ]);
  });

  it("take arrays and what-if tables along", () => {
    const made = sheetAfter(
      '<row r="4"><c r="A4"><f t="array" ref="A4:A5">B4:B5*2</f><v>1</v></c><c r="D4"><f t="dataTable" ref="D4:D5" dt2D="0" dtr="0" r1="B3"/><v>1</v></c></row>',
      "",
      insertRow,
    );
    expect(made).toContain('<f t="array" ref="A5:A6">B5:B6*2</f>');
    expect(made).toContain('<f t="dataTable" ref="D5:D6" dt2D="0" dtr="0" r1="B4"/>');
  });
});

describe("other parts", () => {
  it("of drawings stand with their cells, or stay where they are fastened to none", () => {
    const anchor = (kind: string, from: number, to: number): string =>
      `<xdr:twoCellAnchor${kind}><xdr:from><xdr:col>1</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${from}</xdr:row><xdr:rowOff>9</xdr:rowOff></xdr:from><xdr:to><xdr:col>3</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${to}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to><xdr:sp macro="" textlink="$B$4"/></xdr:twoCellAnchor>`;
    const xml = `<xdr:wsDr xmlns:xdr="urn:xdr">${anchor("", 1, 4)}${anchor(' editAs="oneCell"', 1, 4)}${anchor(' editAs="absolute"', 3, 4)}${anchor("", 2, 2)}</xdr:wsDr>`;
    const lines = (act: LinesAct): string[] =>
      [
        ...(
          after(withPart("drawing", "drawings/drawing1.xml", xml), act)[
            "xl/drawings/drawing1.xml"
          ] ?? ""
        ).matchAll(/<xdr:row>(\d+)|textlink="([^"]*)/g),
      ].map(([, row, link]) => row ?? link ?? "");
    expect(lines(insertRow)).toEqual([
      "1",
      "5",
      "$B$5",
      "1",
      "4",
      "$B$5",
      "3",
      "4",
      "$B$5",
      "3",
      "3",
      "$B$5",
    ]);
    expect(lines(deleteRow)).toEqual([
      "1",
      "3",
      "$B$3",
      "1",
      "4",
      "$B$3",
      "3",
      "4",
      "$B$3",
      "2",
      "2",
      "$B$3",
    ]);
  });

  it("of notes and threaded comments go with their cells, boxes and all", () => {
    const parts = partsWith(sheetOf(rows), {
      "xl/worksheets/_rels/sheet1.xml.rels": related(
        ["comments", "../comments1.xml"],
        ["vmlDrawing", "../boxes.vml"],
        ["threadedComment", "../threads.xml"],
      ),
      "xl/comments1.xml":
        '<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors/><commentList><comment ref="A3"><text><t>a</t></text></comment><comment ref="B4"><text><t>b</t></text></comment></commentList></comments>',
      "xl/threads.xml":
        '<ThreadedComments><threadedComment ref="A3" id="{1}"/><threadedComment ref="B4" id="{2}"/></ThreadedComments>',
      "xl/boxes.vml":
        '<xml xmlns:v="urn:v" xmlns:x="urn:x"><v:shapetype id="t"/><v:shape id="1"><x:ClientData ObjectType="Note"><x:Anchor>1, 15, 2, 4, 3, 15, 6, 4</x:Anchor><x:Row>2</x:Row><x:Column>0</x:Column></x:ClientData></v:shape><v:shape id="2"><x:ClientData ObjectType="Note"><x:Anchor>2, 15, 3, 4, 4, 15, 7, 4</x:Anchor><x:Row>3</x:Row><x:Column>1</x:Column></x:ClientData></v:shape><v:shape id="3"><x:ClientData ObjectType="Drop"><x:Anchor>2, 15, 1, 4, 4, 15, 4, 4</x:Anchor><x:FmlaLink>$A$5</x:FmlaLink><x:FmlaRange>Data!$A$1:$A$5</x:FmlaRange></x:ClientData></v:shape></xml>',
    });
    const made = after(parts, deleteRow);
    expect(made["xl/comments1.xml"]).toContain(
      '<commentList><comment ref="B3"><text><t>b</t></text></comment></commentList>',
    );
    expect(made["xl/threads.xml"]).toBe(
      '<ThreadedComments><threadedComment ref="B3" id="{2}"/></ThreadedComments>',
    );
    expect(made["xl/boxes.vml"]).toBe(
      '<xml xmlns:v="urn:v" xmlns:x="urn:x"><v:shapetype id="t"/><v:shape id="2"><x:ClientData ObjectType="Note"><x:Anchor>2, 15, 2, 4, 4, 15, 6, 4</x:Anchor><x:Row>2</x:Row><x:Column>1</x:Column></x:ClientData></v:shape><v:shape id="3"><x:ClientData ObjectType="Drop"><x:Anchor>2, 15, 1, 4, 4, 15, 3, 4</x:Anchor><x:FmlaLink>$A$4</x:FmlaLink><x:FmlaRange>Data!$A$1:$A$4</x:FmlaRange></x:ClientData></v:shape></xml>',
    );
  });

  it("of charts keep what their cells last held while they are as many, and drop it otherwise", () => {
    const chart = (ref: string): string =>
      `<c:chartSpace xmlns:c="urn:c"><c:val><c:numRef><c:f>${ref}</c:f><c:numCache><c:ptCount val="2"/></c:numCache></c:numRef></c:val></c:chartSpace>`;
    const made = (ref: string, act: LinesAct): string =>
      after(partsWith(sheetOf(rows), { "xl/charts/chart1.xml": chart(ref) }), act)[
        "xl/charts/chart1.xml"
      ] ?? "";
    expect(made("Data!$A$4:$A$5", insertRow)).toBe(chart("Data!$A$5:$A$6"));
    expect(made("Data!$A$1:$A$5", insertRow)).toContain(
      "<c:numRef><c:f>Data!$A$1:$A$6</c:f></c:numRef>",
    );
    expect(made("(Data!$A$1,Data!$A$4)", deleteRow)).toBe(chart("(Data!$A$1,Data!$A$3)"));
    expect(made("Data!$A$3", deleteRow)).toContain("<c:numRef><c:f>#REF!</c:f></c:numRef>");
  });

  it("of pivot tables follow: where they stand, and what they are made of", () => {
    const pivot = (ref: string): Parts =>
      withPart(
        "pivotTable",
        "pivotTables/pivotTable1.xml",
        `<pivotTableDefinition><location ref="${ref}"/></pivotTableDefinition>`,
      );
    expect(after(pivot("D4:E9"), insertRow)["xl/pivotTables/pivotTable1.xml"]).toContain(
      'ref="D5:E10"',
    );
    expect(troubleOf(pivot("D2:E9"), insertRow)).toBe("cuts-pivot");
    expect(troubleOf(pivot("D1:E5"), deleteRow)).toBe("cuts-pivot");
    const cache = (ref: string): Parts =>
      partsWith(sheetOf(rows), {
        "xl/pivotCache/pivotCacheDefinition1.xml": `<pivotCacheDefinition><cacheSource type="worksheet"><worksheetSource ref="${ref}" sheet="Data"/></cacheSource></pivotCacheDefinition>`,
      });
    expect(after(cache("A1:B5"), insertRow)["xl/pivotCache/pivotCacheDefinition1.xml"]).toContain(
      'ref="A1:B6"',
    );
    expect(troubleOf(cache("A3:B3"), deleteRow)).toBe("loses-source");
  });
});

describe("what would lose a reference is refused", () => {
  it.each([
    ["queryTable", "from-outside"],
    ["tableSingleCells", "unknown-part"],
  ])("a sheet that leads to a %s", (kind, trouble) => {
    expect(troubleOf(withPart(kind, "other.xml", "<other/>"), insertRow)).toBe(trouble);
  });

  it.each([
    ["xl/revisions/revisionHeaders.xml", "<headers/>", "revisions"],
    [
      "xl/connections.xml",
      '<connections><connection><parameters><parameter cell="Data!A1"/></parameters></connection></connections>',
      "connection-parameters",
    ],
    [
      "xl/webextensions/webextension1.xml",
      '<webextension><bindings><binding id="1"/></bindings></webextension>',
      "bindings",
    ],
    ["xl/volatileDependencies.xml", "<volTypes/>", "unknown-part"],
  ])("a workbook with %s", (part, xml, trouble) => {
    expect(troubleOf(partsWith(sheetOf(rows), { [part]: xml }), insertRow)).toBe(trouble);
  });

  it.each([
    ['<extLst><ext uri="u"><somethingNew ref="A1"/></ext></extLst>', insertRow, "unknown-part"],
    ["<webPublishItems/>", insertRow, "unknown-part"],
    ['<autoFilter ref="A3:B5"/>', deleteRow, "cuts-filter"],
    [
      '<dataValidations count="1"><dataValidation type="custom" sqref="A1"><formula1>SUM(A1</formula1></dataValidation></dataValidations>',
      insertRow,
      "unreadable-formula",
    ],
  ] as const)("%s", (around, act, trouble) => {
    expect(troubleOf(partsWith(sheetOf(rows, around)), act)).toBe(trouble);
  });

  it.each([
    ['<row r="2"><c r="A2"><f t="array" ref="A2:A4">B2:B4</f></c></row>', insertRow, "cuts-array"],
    ['<row r="3"><c r="A3"><f t="array" ref="A3:A4">B2:B3</f></c></row>', deleteRow, "cuts-array"],
    ['<row r="2"><c r="A2"><f>SUM(A3</f></c></row>', insertRow, "unreadable-formula"],
    ['<row r="1048576"><c r="A1048576"><v>1</v></c></row>', insertRow, "pushed-out"],
  ] as const)("%s", (cells, act, trouble) => {
    expect(troubleOf(partsWith(sheetOf(cells)), act)).toBe(trouble);
  });
});

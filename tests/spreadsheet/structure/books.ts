/**
 * Workbooks written by hand, with what other programs put into files: for each a list of what it has, drawn
 * from a row of figures. Nothing of them comes from what reads and writes files here.
 */
import { main, office, type Parts, zipped } from "../../xlsx/files";

/** The same figures at every run, from one to the next. */
export class Dice {
  constructor(private state: number) {}
  /** A whole number below `many`. */
  roll(many: number): number {
    this.state = (Math.imul(this.state ^ (this.state >>> 15), 0x2c1b3c6d) + 0x6d2b79f5) >>> 0;
    const mixed = Math.imul(this.state ^ (this.state >>> 13), 0x297a2d39) >>> 0;
    return ((mixed ^ (mixed >>> 16)) >>> 0) % many;
  }
  of<T>(choices: readonly T[]): T {
    return choices[this.roll(choices.length)] as T;
  }
  is(inHundred: number): boolean {
    return this.roll(100) < inHundred;
  }
}

const packaged = "http://schemas.openxmlformats.org/package/2006";
const type = "application/vnd.openxmlformats-officedocument";
const x14 = "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main";
const xm = "http://schemas.microsoft.com/office/excel/2006/main";

export const sheetNames = ["Log", "Pier's 2", "Totals"] as const;
const quoted = { Log: "Log", "Pier's 2": "'Pier''s 2'", Totals: "Totals" } as const;
type SheetName = (typeof sheetNames)[number];

const letters = "ABCDEFGHIJKLMNOP";
const at = (row: number, column: number): string => `${letters[column] ?? "A"}${String(row + 1)}`;
const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** Rows and columns of typed figures: what formulas refer to. */
const dataRows = 12;
const dataColumns = 6;

/** An address among the figures, with dollar signs or without. */
function address(dice: Dice): string {
  const [column, row] = [dice.roll(dataColumns), dice.roll(dataRows)];
  return `${dice.is(30) ? "$" : ""}${letters[column] ?? ""}${dice.is(30) ? "$" : ""}${String(row + 1)}`;
}

function block(dice: Dice): string {
  const [left, top] = [dice.roll(dataColumns - 1), dice.roll(dataRows - 1)];
  const [right, bottom] = [left + dice.roll(dataColumns - left), top + dice.roll(dataRows - top)];
  const mark = (): string => (dice.is(30) ? "$" : "");
  return `${mark()}${letters[left] ?? ""}${mark()}${String(top + 1)}:${mark()}${letters[right] ?? ""}${mark()}${String(bottom + 1)}`;
}

const prefix = (dice: Dice): string => (dice.is(50) ? "" : `${quoted[dice.of(sheetNames)]}!`);

function term(dice: Dice): string {
  switch (dice.roll(9)) {
    case 0:
      return `SUM(${prefix(dice)}${block(dice)})`;
    case 1:
      return `COUNT(${prefix(dice)}${dice.of(["$A:$B", "C:C", "B:$D"])})`;
    case 2:
      return `ROWS(${dice.of(["Log!$2:$3", "Log!4:6", "'Pier''s 2'!1:$1"])})`;
    case 3:
      return `SUM(Log:Totals!${address(dice)})`;
    case 4:
      return `INDEX(${prefix(dice)}${block(dice)},1,1)`;
    case 5:
      return `IF(${prefix(dice)}${address(dice)}>2,"A1:B2 &<'","no")`;
    case 6:
      return dice.of(["Rate", "Many", "SUM(Readings)"]);
    default:
      return `${prefix(dice)}${address(dice)}`;
  }
}

const formula = (dice: Dice): string =>
  [term(dice), term(dice)].join(dice.of(["+", "&", "*", "-"]));

const plain = (row: number, column: number, text: string): string =>
  `<c r="${at(row, column)}"><f>${escaped(text)}</f><v>0</v></c>`;

/** Cells by row and column, as a file writes them. */
type Cells = Map<number, Map<number, string>>;
function put(cells: Cells, row: number, column: number, xml: string): void {
  const there = cells.get(row) ?? new Map<number, string>();
  there.set(column, xml);
  cells.set(row, there);
}

/** A formula that cells share: down, across, or over a block. */
function share(
  cells: Cells,
  index: number,
  text: string,
  area: readonly [number, number, number, number],
): void {
  const [row, column, rows, columns] = area;
  const ref = `${at(row, column)}:${at(row + rows - 1, column + columns - 1)}`;
  for (let down = 0; down < rows; down++) {
    for (let across = 0; across < columns; across++) {
      const isFirst = down + across === 0;
      const tag = isFirst
        ? `<f t="shared" ref="${ref}" si="${String(index)}">${escaped(text)}</f>`
        : `<f t="shared" si="${String(index)}"/>`;
      const name = at(row + down, column + across);
      put(cells, row + down, column + across, `<c r="${name}">${tag}<v>0</v></c>`);
    }
  }
}

function cellsOf(dice: Dice): Cells {
  const cells: Cells = new Map();
  for (let row = 0; row < dataRows; row++) {
    for (let column = 0; column < dataColumns; column++) {
      const name = at(row, column);
      if (dice.is(8)) continue;
      const figure = `<c r="${name}"><v>${String(dice.roll(90) / 10)}</v></c>`;
      const word = `<c r="${name}" t="inlineStr"><is><t>lot ${name}</t></is></c>`;
      put(cells, row, column, dice.is(85) ? figure : word);
    }
  }
  share(cells, 0, `${address(dice)}*2+$B$3`, [2, 6, 8, 1]);
  share(cells, 1, `B2+${prefix(dice)}$C4-A$2`, [1, 7, 10, 1]);
  share(cells, 2, `SUM(A$1:A12)+${prefix(dice)}B2`, [13, 0, 1, 5]);
  share(cells, 3, `${address(dice)}&C3`, [1, 8, 4, 2]);
  const arrays = dice.roll(3);
  if (arrays > 0) {
    const [row, rows] = [dice.of([0, 5]), dice.of([1, 3])];
    for (let down = 0; down < rows; down++) {
      const tag =
        down === 0
          ? `<f t="array" ref="${rows === 1 ? at(row, 10) : `${at(row, 10)}:${at(row + rows - 1, 10)}`}">${block(dice)}*2</f>`
          : "";
      put(cells, row + down, 10, `<c r="${at(row + down, 10)}">${tag}<v>0</v></c>`);
    }
  }
  for (let count = 0; count < 8; count++) {
    put(cells, dice.roll(15), 11 + dice.roll(3), "");
  }
  for (const [row, across] of cells) {
    for (const column of across.keys()) {
      if (across.get(column) === "") across.set(column, plain(row, column, formula(dice)));
    }
  }
  return cells;
}

const headings = ["Lot", "Titre", "Mass", "Acid value"];

/** A table below all else, with a column of formulas and sometimes a row of totals. */
function putTable(cells: Cells, top: number, hasTotals: boolean): void {
  headings.forEach((heading, column) => {
    put(
      cells,
      top,
      column,
      `<c r="${at(top, column)}" t="inlineStr"><is><t>${heading}</t></is></c>`,
    );
  });
  for (let row = top + 1; row < top + 5; row++) {
    [0, 1, 2].forEach((column) => {
      put(cells, row, column, `<c r="${at(row, column)}"><v>${String(row + column)}</v></c>`);
    });
    put(cells, row, 3, plain(row, 3, "Runs[[#This Row],[Titre]]/Runs[[#This Row],[Mass]]+$B$1"));
  }
  if (!hasTotals) return;
  put(cells, top + 5, 0, `<c r="${at(top + 5, 0)}" t="inlineStr"><is><t>All</t></is></c>`);
  put(cells, top + 5, 1, plain(top + 5, 1, "SUBTOTAL(109,Runs[Titre])"));
}

function tableXml(top: number, hasTotals: boolean): string {
  const ref = (rows: number): string => `${at(top, 0)}:${at(top + rows, 3)}`;
  const columns = headings.map((heading, index) => {
    const open = `<tableColumn id="${String(index + 1)}" name="${heading}"`;
    if (index === 1 && hasTotals) return `${open} totalsRowFunction="sum"/>`;
    return index === 3
      ? `${open}><calculatedColumnFormula>Runs[[#This Row],[Titre]]/Runs[[#This Row],[Mass]]+$B$1</calculatedColumnFormula></tableColumn>`
      : `${open}/>`;
  });
  const totals = hasTotals ? 'totalsRowCount="1"' : 'totalsRowShown="0"';
  return `<table xmlns="${main}" id="1" name="Runs" displayName="Runs" ref="${ref(hasTotals ? 5 : 4)}" ${totals}><autoFilter ref="${ref(4)}"/><tableColumns count="4">${columns.join("")}</tableColumns></table>`;
}

/** In the order that the format wants. */
function aroundOf(
  dice: Dice,
  sheet: SheetName,
): { readonly before: string; readonly after: string } {
  const other = quoted[dice.of(sheetNames)];
  const merges = ["A16:C17", "E16:E18", "G16:H16"].filter(() => dice.is(70));
  const rules = [
    `<conditionalFormatting sqref="A1:A12"><cfRule type="expression" dxfId="0" priority="1"><formula>$B1&gt;$C$3</formula></cfRule></conditionalFormatting>`,
    `<conditionalFormatting sqref="C2:D6 C9:D11"><cfRule type="cellIs" dxfId="0" priority="2" operator="between"><formula>$A$2</formula><formula>$A$9</formula></cfRule></conditionalFormatting>`,
  ].filter(() => dice.is(75));
  const choices = [
    `<dataValidation type="list" allowBlank="1" sqref="B2:B10"><formula1>${quoted[sheet]}!$A$3:$A$8</formula1></dataValidation>`,
    `<dataValidation type="whole" operator="greaterThan" allowBlank="1" sqref="D4 D6:D9"><formula1>${other}!$B$4</formula1></dataValidation>`,
  ].filter(() => dice.is(75));
  const newer = dice.is(50)
    ? `<extLst><ext uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}" xmlns:x14="${x14}"><x14:dataValidations count="1" xmlns:xm="${xm}"><x14:dataValidation type="list" allowBlank="1"><x14:formula1><xm:f>${other}!$C$2:$C$7</xm:f></x14:formula1><xm:sqref>E3:E9</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>`
    : "";
  const isFrozen = dice.is(50);
  const pane = `<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft" activeCell="B4" sqref="B4"/>`;
  const view = `<sheetViews><sheetView workbookViewId="0">${isFrozen ? pane : ""}</sheetView></sheetViews>`;
  const cols = `<cols><col min="2" max="4" width="14.5" customWidth="1"/></cols>`;
  const list = (tag: string, items: readonly string[], between: string): string =>
    items.length === 0 ? "" : `<${tag} count="${String(items.length)}">${between}</${tag}>`;
  return {
    before: view + cols,
    after:
      list("mergeCells", merges, merges.map((ref) => `<mergeCell ref="${ref}"/>`).join("")) +
      rules.join("") +
      list("dataValidations", choices, choices.join("")) +
      `<hyperlinks><hyperlink ref="F2" location="${escaped(other).replaceAll('"', "")}!A1" display="to"/></hyperlinks>` +
      `<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/>` +
      `<rowBreaks count="1" manualBreakCount="1"><brk id="7" max="16383" man="1"/></rowBreaks>` +
      (sheet === "Log" ? '<drawing r:id="rId1"/><legacyDrawing r:id="rId2"/>' : "") +
      (sheet === "Totals" ? '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>' : "") +
      newer,
  };
}

function sheetXml(
  dice: Dice,
  sheet: SheetName,
  table: { top: number; hasTotals: boolean },
): string {
  const cells = cellsOf(dice);
  if (sheet === "Totals") putTable(cells, table.top, table.hasTotals);
  const rows = [...cells.keys()].sort((a, b) => a - b);
  const data = rows.map((row) => {
    const across = [...(cells.get(row) ?? new Map<number, string>())].sort(([a], [b]) => a - b);
    const height = dice.is(10) ? ' ht="30" customHeight="1"' : "";
    return `<row r="${String(row + 1)}"${height}>${across.map(([, xml]) => xml).join("")}</row>`;
  });
  const { before, after } = aroundOf(dice, sheet);
  return `<worksheet xmlns="${main}" xmlns:r="${office}">${before}<sheetData>${data.join("")}</sheetData>${after}</worksheet>`;
}

const relationships = (of: readonly (readonly [kind: string, target: string])[]): string =>
  `<Relationships xmlns="${packaged}/relationships">${of
    .map(
      ([kind, target], index) =>
        `<Relationship Id="rId${String(index + 1)}" Type="${office}/${kind}" Target="${target}"/>`,
    )
    .join("")}</Relationships>`;

const chart = (dice: Dice): string => {
  const sheet = quoted[dice.of(sheetNames)];
  return `<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><c:chart><c:plotArea><c:layout/><c:lineChart><c:grouping val="standard"/><c:ser><c:idx val="0"/><c:order val="0"/><c:cat><c:numRef><c:f>${sheet}!$A$2:$A$9</c:f></c:numRef></c:cat><c:val><c:numRef><c:f>${sheet}!$B$2:$B$9</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="8"/><c:pt idx="0"><c:v>1</c:v></c:pt></c:numCache></c:numRef></c:val></c:ser><c:axId val="1"/><c:axId val="2"/></c:lineChart><c:catAx><c:axId val="1"/><c:scaling/><c:delete val="0"/><c:axPos val="b"/><c:crossAx val="2"/></c:catAx><c:valAx><c:axId val="2"/><c:scaling/><c:delete val="0"/><c:axPos val="l"/><c:crossAx val="1"/></c:valAx></c:plotArea></c:chart></c:chartSpace>`;
};

const drawing = `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><xdr:twoCellAnchor editAs="oneCell"><xdr:from><xdr:col>20</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>40</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>24</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>52</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to><xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="2" name="Chart"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:chart xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" xmlns:r="${office}" r:id="rId1"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>`;

const noteAt: readonly (readonly [number, number])[] = [
  [1, 1],
  [7, 3],
];
const comments = `<comments xmlns="${main}"><authors><author>Bo</author></authors><commentList>${noteAt
  .map(
    ([row, column]) =>
      `<comment ref="${at(row, column)}" authorId="0"><text><t>cloudy ${at(row, column)}</t></text></comment>`,
  )
  .join("")}</commentList></comments>`;
const boxes = `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">${noteAt
  .map(
    ([row, column], index) =>
      `<v:shape id="_x0000_s${String(1025 + index)}" type="#_x0000_t202" style="visibility:hidden"><x:ClientData ObjectType="Note"><x:Anchor>${String(column + 1)}, 15, ${String(row)}, 2, ${String(column + 3)}, 15, ${String(row + 4)}, 4</x:Anchor><x:Row>${String(row)}</x:Row><x:Column>${String(column)}</x:Column></x:ClientData></v:shape>`,
  )
  .join("")}</xml>`;

function names(dice: Dice): string {
  const inAll = dice.of(sheetNames);
  return [
    `<definedName name="Readings">Log!$A$2:$B$9</definedName>`,
    `<definedName name="Many">COUNT(${quoted[inAll]}!$A$1:$F$12)</definedName>`,
    `<definedName name="Rate">${quoted[dice.of(sheetNames)]}!$C$${String(1 + dice.roll(12))}</definedName>`,
    `<definedName name="Local" localSheetId="1">'Pier''s 2'!$D$4+Log!$A$${String(1 + dice.roll(12))}</definedName>`,
    `<definedName name="_xlnm.Print_Area" localSheetId="0">Log!$A$1:$H$${String(8 + dice.roll(12))}</definedName>`,
    `<definedName name="_xlnm.Print_Titles" localSheetId="0">Log!$A:$B,Log!$2:$3</definedName>`,
  ].join("");
}

const overrides: readonly (readonly [string, string])[] = [
  ["/xl/workbook.xml", `${type}.spreadsheetml.sheet.main+xml`],
  ...[1, 2, 3].map(
    (each) =>
      [`/xl/worksheets/sheet${String(each)}.xml`, `${type}.spreadsheetml.worksheet+xml`] as const,
  ),
  ["/xl/styles.xml", `${type}.spreadsheetml.styles+xml`],
  ["/xl/tables/table1.xml", `${type}.spreadsheetml.table+xml`],
  ["/xl/comments1.xml", `${type}.spreadsheetml.comments+xml`],
  ["/xl/drawings/drawing1.xml", `${type}.drawing+xml`],
  ["/xl/charts/chart1.xml", `${type}.drawingml.chart+xml`],
];

const styles = `<styleSheet xmlns="${main}"><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="1"><xf xfId="0"/></cellXfs><dxfs count="1"><dxf><font><b/></font></dxf></dxfs></styleSheet>`;

/** The parts of a workbook made of a row of figures. */
function partsMade(seed: number): Parts {
  const dice = new Dice(seed);
  const table = { top: 20 + dice.roll(3), hasTotals: dice.is(50) };
  const sheets = sheetNames.map((name) => sheetXml(dice, name, table));
  return {
    "[Content_Types].xml": `<Types xmlns="${packaged}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Default Extension="vml" ContentType="${type}.vmlDrawing"/>${overrides.map(([part, kind]) => `<Override PartName="${part}" ContentType="${kind}"/>`).join("")}</Types>`,
    "_rels/.rels": relationships([["officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}"><sheets>${sheetNames.map((name, index) => `<sheet name="${name}" sheetId="${String(index + 1)}" r:id="rId${String(index + 1)}"/>`).join("")}</sheets><definedNames>${names(dice)}</definedNames></workbook>`,
    "xl/_rels/workbook.xml.rels": relationships([
      ...[1, 2, 3].map((each) => ["worksheet", `worksheets/sheet${String(each)}.xml`] as const),
      ["styles", "styles.xml"],
    ]),
    "xl/styles.xml": styles,
    ...Object.fromEntries(
      sheets.map((xml, index) => [`xl/worksheets/sheet${String(index + 1)}.xml`, xml]),
    ),
    "xl/worksheets/_rels/sheet1.xml.rels": relationships([
      ["drawing", "../drawings/drawing1.xml"],
      ["vmlDrawing", "../drawings/boxes1.vml"],
      ["comments", "../comments1.xml"],
    ]),
    "xl/worksheets/_rels/sheet3.xml.rels": relationships([["table", "../tables/table1.xml"]]),
    "xl/tables/table1.xml": tableXml(table.top, table.hasTotals),
    "xl/comments1.xml": comments,
    "xl/drawings/boxes1.vml": boxes,
    "xl/drawings/drawing1.xml": drawing,
    "xl/drawings/_rels/drawing1.xml.rels": relationships([["chart", "../charts/chart1.xml"]]),
    "xl/charts/chart1.xml": chart(dice),
  };
}

export const bookMade = (seed: number): Uint8Array => zipped(partsMade(seed));

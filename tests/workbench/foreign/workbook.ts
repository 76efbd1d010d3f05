/**
 * Workbooks as other programs and people make them, written by hand as XML and by chance: a sheet of
 * inputs and formulas, two more sheets, a table with odd headings, names of both scopes.
 */
import { main, office, type Parts, partsWith, sheetOf, zipped } from "../../xlsx/files";
import { Chance } from "./chance";
import { someFormula } from "./formulas";

export interface ForeignFormula {
  readonly sheet: string;
  readonly address: string;
  readonly text: string;
  /** Attributes of the formula's element. */
  readonly kind: string;
}

export interface Foreign {
  readonly seed: number;
  readonly formulas: readonly ForeignFormula[];
  /** Cells in which a formula elsewhere answers. */
  readonly answers: readonly string[];
  /** Some formulas call functions of the add-in. */
  readonly callsOurs: boolean;
  /** Cells to type figures into. */
  readonly inputs: readonly string[];
  /** The file, with these results of its formulas; by sheet and address. */
  bytes(results?: ReadonlyMap<string, string>): Uint8Array;
}

export const log = "Log";
const list = "2nd's list";

const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

const words = ["oak", "lot #4", "ash & elm", "oat", "", "beech"];

/** A result as a file holds it, from how it is shown. */
function stored(shown: string | undefined): { type: string; value: string } {
  if (shown === undefined) return { type: "", value: "" };
  if (/^-?\d+(\.\d+)?(E[+-]?\d+)?$/i.test(shown)) return { type: "", value: `<v>${shown}</v>` };
  if (shown === "TRUE" || shown === "FALSE") {
    return { type: ' t="b"', value: `<v>${shown === "TRUE" ? "1" : "0"}</v>` };
  }
  if (/^#(DIV\/0!|N\/A|NAME\?|NULL!|NUM!|REF!|VALUE!)$/.test(shown)) {
    return { type: ' t="e"', value: `<v>${shown}</v>` };
  }
  if (/^(Err:|#)/.test(shown)) return { type: ' t="e"', value: "<v>#VALUE!</v>" };
  return { type: ' t="str"', value: `<v>${escaped(shown)}</v>` };
}

function input(chance: Chance, address: string, column: string): string {
  if (chance.is(0.12)) return "";
  if (column === "C") {
    const word = escaped(chance.one(words));
    if (chance.is(0.3)) {
      return `<c r="${address}" t="inlineStr"><is><r><rPr><b/></rPr><t>${word}</t></r></is></c>`;
    }
    return `<c r="${address}" t="inlineStr"><is><t>${word}</t></is></c>`;
  }
  if (chance.is(0.04)) return `<c r="${address}" t="b"><v>1</v></c>`;
  if (chance.is(0.04)) return `<c r="${address}" t="inlineStr"><is><t>n/a</t></is></c>`;
  const figure = chance.is(0.5) ? chance.below(9) : Math.round(chance.next() * 1000) / 100;
  return `<c r="${address}"><v>${figure}</v></c>`;
}

/** Shown are the rows with more than this. */
const least = 2;
const filter = `<autoFilter ref="F1:I7"><filterColumn colId="2"><customFilters><customFilter operator="greaterThan" val="${least}"/></customFilters></filterColumn></autoFilter>`;

const table = (isFiltered: boolean) =>
  `<table xmlns="${main}" id="1" name="Lots" displayName="Lots" ref="F1:I8" totalsRowCount="1">${isFiltered ? filter : '<autoFilter ref="F1:I7"/>'}<tableColumns count="4"><tableColumn id="1" name="#lot"/><tableColumn id="2" name="a [b] #"/><tableColumn id="3" name="mL" totalsRowFunction="sum"/><tableColumn id="4" name="twice"><calculatedColumnFormula>Lots[[#This Row],[mL]]*2</calculatedColumnFormula></tableColumn></tableColumns></table>`;

const link = {
  part: `<externalLink xmlns="${main}"><externalBook xmlns:r="${office}" r:id="rId1"><sheetNames><sheetName val="Rates"/></sheetNames><sheetDataSet><sheetData sheetId="0"><row r="1"><cell r="A1"><v>7</v></cell></row></sheetData></sheetDataSet></externalBook></externalLink>`,
  relationships: `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/externalLinkPath" Target="rates.xlsx" TargetMode="External"/></Relationships>`,
  type: '<Override PartName="/xl/externalLinks/externalLink1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.externalLink+xml"/>',
};

export function foreignWorkbook(seed: number): Foreign {
  const chance = new Chance(seed);
  const formulas: ForeignFormula[] = [];
  const made: string[] = [];
  const inputs: string[] = [];
  /** By row: what stands there but formulas, by column. */
  const cells = new Map<number, Map<string, string>>();
  const put = (row: number, column: string, xml: string): void => {
    if (xml === "") return;
    if (!cells.has(row)) cells.set(row, new Map());
    cells.get(row)?.set(column, xml);
  };
  for (let row = 2; row <= 11; row += 1) {
    for (const column of ["A", "B", "C"]) {
      put(row, column, input(chance, `${column}${row}`, column));
      if (column !== "C") inputs.push(`${column}${row}`);
    }
  }
  ["#lot", "a [b] #", "mL", "twice"].forEach((heading, at) => {
    const column = "FGHI"[at] ?? "";
    put(1, column, `<c r="${column}1" t="inlineStr"><is><t>${heading}</t></is></c>`);
  });
  const few = new Set<number>();
  for (let row = 2; row <= 7; row += 1) {
    put(row, "F", `<c r="F${row}"><v>${row}</v></c>`);
    put(row, "G", `<c r="G${row}" t="inlineStr"><is><t>g${row}</t></is></c>`);
    const amount = chance.below(50) / 8;
    if (amount <= least) few.add(row);
    put(row, "H", `<c r="H${row}"><v>${amount}</v></c>`);
    inputs.push(`H${row}`);
    formulas.push({ sheet: log, address: `I${row}`, text: "Lots[[#This Row],[mL]]*2", kind: "" });
  }
  formulas.push({ sheet: log, address: "H8", text: "SUBTOTAL(109,Lots[mL])", kind: "" });
  const count = 12 + chance.below(14);
  for (let at = 0; at < count; at += 1) {
    const address = `L${at + 2}`;
    const text = someFormula({ chance, before: made });
    const isArray = chance.is(0.06);
    formulas.push({
      sheet: log,
      address,
      text,
      kind: isArray ? ` t="array" ref="${address}"` : "",
    });
    made.push(address);
  }
  // filled down, and written once
  formulas.push({
    sheet: log,
    address: "N2",
    text: "A2*2+$B$2",
    kind: ' t="shared" ref="N2:N6" si="0"',
  });
  for (let row = 3; row <= 6; row += 1) {
    formulas.push({ sheet: log, address: `N${row}`, text: "", kind: ' t="shared" si="0"' });
  }
  if (chance.is(0.4)) {
    formulas.push({ sheet: log, address: "P2", text: "A2:A4*2", kind: ' t="array" ref="P2:P4"' });
  }
  if (chance.is(0.2)) {
    formulas.push({ sheet: log, address: "R2", text: "R3+A2", kind: "" });
    formulas.push({ sheet: log, address: "R3", text: "R2*0.5", kind: "" });
    formulas.push({ sheet: log, address: "R4", text: "R3+1", kind: "" });
  }
  const answers = formulas.some(({ address }) => address === "P2") ? ["P3", "P4"] : [];
  if (chance.is(0.2)) {
    // what A2 would make of other figures
    formulas.push({ sheet: log, address: "T1", text: "A2*2+B3", kind: "" });
    const kind = ' t="dataTable" ref="T2:T4" dt2D="0" dtr="0" r1="A2"';
    formulas.push({ sheet: log, address: "T2", text: "", kind });
    formulas.push({ sheet: log, address: "U3", text: "T3+A3", kind: "" });
    for (const row of [2, 3, 4]) put(row, "S", `<c r="S${row}"><v>${row * 3}</v></c>`);
    answers.push("T3", "T4");
  }
  const isFiltered = chance.is(0.2);
  const someRows = chance.is(0.4) ? new Set([4, 5]) : new Set<number>();
  const hidden = isFiltered ? few : someRows;
  const isMixed = chance.is(0.25);
  const is1904 = chance.is(0.08);
  const isIterating = chance.is(0.1);
  const others = ["A2", "A3", "A4", "A5", "A6"].map(
    (a) => `<c r="${a}"><v>${chance.below(20)}</v></c>`,
  );

  const rowsWith = (results: ReadonlyMap<string, string>): string => {
    const all = new Map([...cells].map(([row, columns]) => [row, new Map(columns)]));
    for (const { address, text, kind } of formulas) {
      const row = Number(address.slice(1));
      const { type, value } = stored(results.get(address));
      const written = `<c r="${address}"${type}><f${kind}>${escaped(text)}</f>${value}</c>`;
      if (!all.has(row)) all.set(row, new Map());
      all.get(row)?.set(address.slice(0, 1), written);
    }
    for (const address of answers) {
      const { type, value } = stored(results.get(address) ?? "0");
      const cell = `<c r="${address}"${type}>${value}</c>`;
      all.get(Number(address.slice(1)))?.set(address.slice(0, 1), cell);
    }
    const rows = [...all]
      .sort(([a], [b]) => a - b)
      .map(([row, columns]) => {
        const inRow = [...columns].sort(([a], [b]) => a.localeCompare(b)).map(([, xml]) => xml);
        return `<row r="${row}"${hidden.has(row) ? ' hidden="1"' : ""}>${inRow.join("")}</row>`;
      });
    return (isMixed ? [...rows.slice(5), ...rows.slice(0, 5)] : rows).join("");
  };
  const names = [
    `<definedName name="allLots">${log}!$B$2</definedName>`,
    `<definedName name="localRate">${log}!$A$2</definedName>`,
    `<definedName name="localRate" localSheetId="0">${log}!$A$3</definedName>`,
    `<definedName name="relative">${log}!A2</definedName>`,
    `<definedName name="titres">${log}!$A$2:$A$6</definedName>`,
  ].join("");
  const sheets = [log, list, "S3"];
  return {
    seed,
    formulas,
    answers,
    callsOurs: formulas.some(({ text }) => text.includes("TITRE.")),
    inputs,
    bytes(results = new Map()) {
      const first = sheetOf(
        rowsWith(results),
        `<tableParts count="1"><tablePart r:id="rId1"/></tableParts>`,
      );
      const base = partsWith(first);
      const relationships = "http://schemas.openxmlformats.org/package/2006/relationships";
      const parts: Parts = {
        ...base,
        "[Content_Types].xml": (base["[Content_Types].xml"] ?? "").replace(
          "</Types>",
          [2, 3]
            .map(
              (n) =>
                `<Override PartName="/xl/worksheets/sheet${n}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>`,
            )
            .join("") +
            link.type +
            `<Override PartName="/xl/tables/table1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"/><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/></Types>`,
        ),
        "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}">${is1904 ? '<workbookPr date1904="1"/>' : ""}<sheets>${sheets.map((name, at) => `<sheet name="${escaped(name)}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`).join("")}</sheets><externalReferences><externalReference r:id="rId9"/></externalReferences><definedNames>${names}</definedNames><calcPr calcId="191029"${isIterating ? ' iterate="1"' : ""}/></workbook>`,
        "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${relationships}">${sheets.map((_, at) => `<Relationship Id="rId${at + 1}" Type="${office}/worksheet" Target="worksheets/sheet${at + 1}.xml"/>`).join("")}<Relationship Id="rId9" Type="${office}/externalLink" Target="externalLinks/externalLink1.xml"/></Relationships>`,
        "xl/externalLinks/externalLink1.xml": link.part,
        "xl/externalLinks/_rels/externalLink1.xml.rels": link.relationships,
        "xl/worksheets/sheet2.xml": sheetOf(
          others.map((cell, at) => `<row r="${at + 2}">${cell}</row>`).join(""),
        ),
        "xl/worksheets/sheet3.xml": sheetOf(`<row r="3"><c r="A3"><v>${seed % 7}</v></c></row>`),
        "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships xmlns="${relationships}"><Relationship Id="rId1" Type="${office}/table" Target="../tables/table1.xml"/></Relationships>`,
        "xl/tables/table1.xml": table(isFiltered),
      };
      return zipped(parts);
    },
  };
}

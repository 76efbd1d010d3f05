/**
 * The fidelity table: eight workbooks, each given three columns and five edits. Which parts may change
 * is said here by hand; what cells must hold is worked out here by plain arithmetic.
 */
import type { CellValue, Edit } from "../../src/xlsx";
import { newXlsx, isFileProblem } from "../../src/xlsx";
import { clear, set, setFormula, setResult, setSpill } from "./answers";
import { made } from "./files";

export interface Fidelity {
  readonly name: string;
  readonly bytes: () => Uint8Array;
  readonly edits: readonly Edit[];
  /** Parts that may differ afterwards; any other must not, by a single packed byte. */
  readonly changed: readonly string[];
  readonly added?: readonly string[];
  readonly removed?: readonly string[];
  /** What cells hold then: sheet, address, value. */
  readonly expected: readonly (readonly [string, string, CellValue])[];
  /** Cells whose result in the file is wrong on purpose: right after recalculation alone. */
  readonly recalculated: readonly (readonly [string, string, number])[];
}

const titres = [2.35, 3.1, 1.85, 4.2, 2.9] as const;
const masses = [10.02, 9.98, 10.0, 10.05, 9.97] as const;
const wrong = 999;

const twice = titres.map((titre) => titre * 2);
const acid = titres.map((titre, index) => (56.1 * 0.1 * titre) / (masses[index] ?? NaN));
const ratio = titres.map((titre, index) => titre / (masses[index] ?? NaN));

/** Three columns for a table: a figure, a text and a formula; the third wrong on purpose. */
const tableColumns = (table: string, twiceFormula: string, thirdFormula: string): Edit[] => [
  {
    do: "add-column",
    table,
    heading: "Twice",
    formula: twiceFormula,
    cells: twice,
    format: "0.00",
  },
  {
    do: "add-column",
    table,
    heading: "Stage",
    cells: ["dried", "a <b>", "x & y", " ", "as received"],
  },
  {
    do: "add-column",
    table,
    heading: "Third",
    formula: thirdFormula,
    cells: titres.map(() => wrong),
  },
];

/** A column set cell by cell. */
const column = (
  sheet: string,
  letters: string,
  first: number,
  heading: string,
  cells: readonly (readonly [string, CellValue] | CellValue)[],
): Edit[] => [
  set(`${letters}${first - 1}`, heading, sheet),
  ...cells.map((cell, index) => {
    const address = `${letters}${first + index}`;
    return Array.isArray(cell)
      ? setFormula(address, cell[0] as string, cell[1] as CellValue, sheet)
      : set(address, cell as CellValue, sheet);
  }),
];

const at = (sheet: string, letters: string, first: number, values: readonly CellValue[]) =>
  values.map((value, index) => [sheet, `${letters}${first + index}`, value] as const);
const figures = (sheet: string, letters: string, first: number, values: readonly number[]) =>
  values.map((value, index) => [sheet, `${letters}${first + index}`, value] as const);

const log = "Bob's log, 2026";
const inTidy = [
  ...at(log, "E", 2, twice),
  ...at(log, "F", 2, ["dried", "a <b>", "x & y", " ", "as received"]),
  [log, "G1", "Third"] as const,
];
const third = figures(log, "G", 2, ratio);

const ourBook = () => {
  const made = newXlsx({
    name: "ours",
    sheets: [
      {
        name: "Lots",
        rows: [
          [{ value: "Saltmarsh Ferries", style: "title" }],
          [
            { value: "Lot", style: "heading", note: "What the drum says" },
            { value: "Titre mL", style: "heading" },
            { value: "Mass g", style: "heading" },
            { value: "Acid value", style: "heading" },
          ],
          ...titres.map((titre, index) => [
            { value: `Lot ${index + 1}`, style: "input" } as const,
            { value: titre, format: "0.00", style: "input" } as const,
            { value: masses[index] ?? 0, format: "0.00", style: "input" } as const,
            {
              formula: "=56.1*0.1*Lots[[#This Row],[Titre mL]]/Lots[[#This Row],[Mass g]]",
              value: acid[index] ?? 0,
              format: "0.000",
              style: "calculated",
            } as const,
          ]),
        ],
        columnWidths: [20, 10, 10, 12],
        tables: [{ name: "Lots", row: 1, column: 0, rows: 6, columns: 4 }],
        frozenRows: 2,
        frozenColumns: 1,
      },
    ],
  });
  if (isFileProblem(made)) throw new Error(made.fields.code);
  return made;
};

export const fidelity: readonly Fidelity[] = [
  {
    name: "ours",
    bytes: ourBook,
    edits: [
      ...tableColumns("Lots", "=[@[Titre mL]]*2", "=[@[Titre mL]]/[@[Mass g]]"),
      set("B3", 5, "Lots"),
      setResult("D3", (56.1 * 0.1 * 5) / 10.02, "Lots"),
      setFormula("J1", "=SUM(Lots[Titre mL])", 17.05, "Lots"),
      set("A4", 'Weir "A" & <B>', "Lots"),
      set("J2", { error: "#N/A" }, "Lots"),
    ],
    changed: ["xl/worksheets/sheet1.xml", "xl/tables/table1.xml", "xl/styles.xml"],
    expected: [
      ...at("Lots", "E", 4, twice.slice(1)),
      ["Lots", "A4", 'Weir "A" & <B>'],
      ["Lots", "D3", (56.1 * 0.1 * 5) / 10.02],
      ["Lots", "J1", 5 + 3.1 + 1.85 + 4.2 + 2.9],
    ],
    recalculated: [["Lots", "G3", 5 / 10.02], ...figures("Lots", "G", 4, ratio.slice(1))],
  },
  {
    name: "charts, sparklines, rules, an image (XlsxWriter)",
    bytes: () => made("charts"),
    edits: [
      ...column(
        "Log book",
        "I",
        5,
        "Twice",
        titres.map((titre, row) => [`=C${row + 5}*2`, titre * 2]),
      ),
      ...column("Log book", "J", 5, "Stage", ["dried", "a <b>", "x & y", " ", "as received"]),
      ...column(
        "Log book",
        "K",
        5,
        "Third",
        titres.map((_, row) => [`=C${row + 5}/D${row + 5}`, wrong]),
      ),
      set("C5", 2.5, "Log book"),
      setResult("E5", (56.1 * 0.1 * 2.5) / 10.02, "Log book"),
      setResult("I5", 5, "Log book"),
      setFormula("E7", "=56.1*0.2*C7/D7", (56.1 * 0.2 * 1.85) / 10, "Log book"),
      clear("B6", "Log book"),
      { ...set("A5", 1, "Log book"), content: { kind: "value", value: { date: "2026-06-01" } } },
    ],
    changed: ["xl/worksheets/sheet1.xml"],
    expected: [
      ["Log book", "I6", 6.2],
      ["Log book", "J6", "a <b>"],
      ["Log book", "E5", (56.1 * 0.1 * 2.5) / 10.02],
      ["Log book", "E7", (56.1 * 0.2 * 1.85) / 10],
    ],
    recalculated: [["Log book", "K5", 2.5 / 10.02], ...figures("Log book", "K", 6, ratio.slice(1))],
  },
  {
    name: "dynamic arrays, LAMBDA names, 1904 (XlsxWriter)",
    bytes: () => made("dynamic"),
    edits: [
      ...tableColumns(
        "Lots",
        "=[@[Titre mL]]*2",
        "=YEAR([@Drawn])*10000+MONTH([@Drawn])*100+DAY([@Drawn])",
      ),
      setSpill("H2", "=FILTER(C2:C6,C2:C6>3)", [[3.1], [4.2]], "Lots"),
      setFormula("J2", "=SUMPRODUCT(C2:C6,C2:C6)", 44.605, "Lots"),
      setFormula("L3", '=TITRE.CORRECTED(C2:C6,"neutralised")', 2.88, "Lots"),
      { ...set("B3", 1, "Lots"), content: { kind: "value", value: { date: "2026-05-20" } } },
      set("B1", 0.2, "Settings"),
    ],
    changed: [
      "xl/worksheets/sheet1.xml",
      "xl/worksheets/sheet2.xml",
      "xl/tables/table1.xml",
      "xl/styles.xml",
    ],
    expected: [
      ...at("Lots", "D", 2, twice),
      ["Lots", "J2", 2.35 ** 2 + 3.1 ** 2 + 1.85 ** 2 + 4.2 ** 2 + 2.9 ** 2],
      ["Settings", "B1", 0.2],
    ],
    recalculated: [
      ["Lots", "F2", 20260505],
      ["Lots", "F3", 20260520],
      ["Lots", "F4", 20260507],
    ],
  },
  {
    name: "a table, merged cells, validation (openpyxl)",
    bytes: () => made("tidy"),
    edits: [
      ...tableColumns("Log", "=[@[Titre mL]]*2", "=Log[[#This Row],[Titre mL]]/[@[Mass g]]"),
      set("A9", "Merged anew", log),
      setFormula("D4", "=1/4", 0.25, log),
      clear("A1", "Notes"),
      set("B5", 3, "Notes"),
      { ...set("A2", "three\n lines", "Notes"), look: "caution" },
    ],
    changed: [
      "xl/worksheets/sheet1.xml",
      "xl/worksheets/sheet2.xml",
      "xl/tables/table1.xml",
      "xl/styles.xml",
    ],
    expected: [...inTidy, [log, "D4", 0.25], [log, "A9", "Merged anew"], ["Notes", "B5", 3]],
    recalculated: third,
  },
  {
    name: "a matrix formula and a name (LibreOffice)",
    bytes: () => made("office"),
    edits: [
      ...column(
        "Sheet of lots",
        "D",
        2,
        "Twice more",
        twice.map((value, row) => [`=C${row + 2}*2`, value * 2]),
      ),
      ...column("Sheet of lots", "E", 2, "Ok", [true, false, true, { error: "#N/A" }, ""]),
      ...column(
        "Sheet of lots",
        "F",
        2,
        "Share",
        titres.map((_, row) => [`=B${row + 2}/SUM(Titres)`, wrong]),
      ),
      setFormula("C10", "=SUM(B2:B6)", 14.4, "Sheet of lots"),
      set("A10", "All", "Sheet of lots"),
      setFormula("C2", "=B2*2", 4.7, "Sheet of lots"),
      set("A8", "below", "Sheet of lots"),
      clear("A3", "Sheet of lots"),
    ],
    changed: ["xl/worksheets/sheet1.xml"],
    expected: [
      ...at(
        "Sheet of lots",
        "D",
        2,
        twice.map((value) => value * 2),
      ),
      ["Sheet of lots", "C10", 14.4],
      ["Sheet of lots", "A8", "below"],
    ],
    recalculated: figures(
      "Sheet of lots",
      "F",
      2,
      titres.map((titre) => titre / 14.4),
    ),
  },
  {
    name: "threaded comments, a web extension, a calculation chain (by hand)",
    bytes: () => made("threaded"),
    edits: [
      ...tableColumns("Log", "=[@[Titre mL]]*2", "=[@[Titre mL]]/[@[Mass g]]"),
      set("D2", 1.5, log),
      setFormula("D3", "=B3", 3.1, log),
      set("B5", true, "Notes"),
      set("A7", "Weir", log),
      { do: "add-note", sheet: log, row: 2, column: 1, text: "Clear" },
    ],
    changed: [
      "xl/worksheets/sheet1.xml",
      "xl/worksheets/sheet2.xml",
      "xl/tables/table1.xml",
      "xl/styles.xml",
      "xl/calcChain.xml",
      "xl/comments/comment1.xml",
      "xl/drawings/commentsDrawing1.vml",
    ],
    expected: [...inTidy, [log, "D2", 1.5], [log, "D3", 3.1]],
    recalculated: third,
  },
  {
    name: "a pivot table and slicers (by hand)",
    bytes: () => made("pivot"),
    edits: [
      ...tableColumns("Log", "=[@[Titre mL]]*2", "=[@[Titre mL]]/[@[Mass g]]"),
      set("A7", "Weir", log),
      { do: "define-name", name: "Molarity", refersTo: "=0.1" },
      setFormula("D5", "=56.1*Molarity*B5/C5", acid[3] ?? NaN, log),
      { do: "set-width", sheet: log, column: 5, characters: 18 },
      { do: "add-sheet", name: "Weir" },
      set("A1", "new", "Weir"),
    ],
    changed: [
      "xl/worksheets/sheet1.xml",
      "xl/tables/table1.xml",
      "xl/styles.xml",
      "xl/workbook.xml",
      "xl/_rels/workbook.xml.rels",
      "[Content_Types].xml",
    ],
    added: ["xl/worksheets/sheet3.xml"],
    expected: [...inTidy, [log, "D5", acid[3] ?? NaN], ["Weir", "A1", "new"]],
    recalculated: third,
  },
  {
    name: "prefixed names, shared formulas, rows without addresses (by hand)",
    bytes: () => made("prefixed"),
    edits: [
      ...column(
        "Data",
        "D",
        3,
        "Twice",
        titres.map((titre, row) => [`=B${row + 3}*2`, titre * 2]),
      ),
      ...column("Data", "E", 3, "Stage", ["dried", "a <b>", "x & y", " ", "as received"]),
      ...column(
        "Data",
        "F",
        3,
        "Third",
        titres.map((_, row) => [`=B${row + 3}/3`, wrong]),
      ),
      set("C3", 7),
      set("B1", "Titre mL"),
      set("A9", "in an empty row"),
      set("A12", "below all"),
      clear("A4"),
    ],
    changed: ["xl/worksheets/sheet1.xml", "xl/calcChain.xml"],
    expected: [
      ...at("Data", "D", 3, twice),
      ["Data", "E3", "dried"],
      ["Data", "C3", 7],
      ["Data", "C4", 3.1 * 2.35 + 1],
      ["Data", "C7", 2.9 * 2.35 + 1],
      ["Data", "A9", "in an empty row"],
      ["Data", "A12", "below all"],
    ],
    recalculated: figures(
      "Data",
      "F",
      3,
      titres.map((titre) => titre / 3),
    ),
  },
];

/**
 * old-logbook.xlsx: the logbook that Saltmarsh Ferries kept before it had a tool, untidy and with its
 * mistakes: typed figures and formulas, two kinds of dates, a chart, a picture, comments, conditional
 * formats, a list to choose from, a merged title, frozen panes, a hidden column.
 */
import type { Book, BookCell, BookSheet } from "../../sheet/book";
import {
  entryCount,
  headingRow,
  oldEntries,
  type OldEntry,
  rowOfEntry,
  yearBefore,
} from "./untidy/entries";
import { untidied } from "./untidy/raw-parts";
import { computedBook } from "./computed";
import { fileOf, type Sample } from "./sample";

const sheetName = "Oil book";

const headings = [
  "No",
  "Date",
  "Drum",
  "KOH 1 (ml)",
  "KOH 2 (ml)",
  "KOH 3 (ml)",
  "Blank",
  "Avg",
  "Net ml",
  "Oil sample g",
  "KOH sol g/L",
  "FFA %",
  "Oil in",
  "unit",
  "Oil kg",
  "Extra KOH (g)",
  "KOH total (g)",
  "MeOH (l)",
  "Weighed out g",
  "Remarks",
];

const comments: Readonly<Record<string, string>> = {
  Blank: "Alcohol alone, same flask.",
  "Extra KOH (g)": "For the free acids. Ask Engineer where this came from.",
  "FFA %": "As oleic.",
};

const settings: readonly (readonly (BookCell | null)[])[] = [
  [{ value: "KOH purity %" }, { value: 90 }],
  [{ value: "Base charge g/L" }, { value: 7 }],
  [{ value: "Catalyst" }, { value: "KOH" }],
];

const decimals = { average: 2, net: 2, ffa: 2, kilograms: 1, extra: 0, total: 0 } as const;
type Result = keyof typeof decimals;

const formatOf = (result: Result): string =>
  decimals[result] === 0 ? "0" : `0.${"0".repeat(decimals[result])}`;

function cellsOf(each: OldEntry): BookCell[] {
  const row = String(rowOfEntry(each.entry) + 1);
  const worked = (result: Result): BookCell => ({
    formula: `=${each.formulas[result](row)}`,
    format: formatOf(result),
  });
  const titre = (at: number): BookCell => {
    const value = each.titres[at];
    return value === undefined ? {} : { value, format: "0.00" };
  };
  return [
    { value: each.entry },
    each.date,
    { value: each.drum },
    titre(0),
    titre(1),
    titre(2),
    { value: each.blank, format: "0.00" },
    worked("average"),
    worked("net"),
    each.sample,
    { value: each.strength },
    worked("ffa"),
    { value: each.amount },
    { value: each.unit },
    worked("kilograms"),
    worked("extra"),
    worked("total"),
    { formula: `=M${row}*${String(each.methanolPerUnit)}`, format: "0.0" },
    each.weighedShare === undefined
      ? {}
      : { formula: `=MROUND(Q${row}*${String(each.weighedShare)},5)`, format: "0" },
    each.remark === "" ? {} : { value: each.remark },
  ];
}

function sheetOf(): BookSheet {
  const rows: (BookCell | null)[][] = [
    [{ value: "SALTMARSH FERRIES - OIL BOOK 2024-26", style: "title" }],
    [],
    ...settings.map((row) => [...row]),
    [],
    headings.map((value) => ({
      value,
      style: "heading",
      ...(comments[value] ? { note: comments[value] } : {}),
    })),
  ];
  for (const each of oldEntries()) {
    const year = yearBefore(each.entry);
    if (year !== undefined) rows.push([null, { value: `--- ${year} ---` }]);
    rows.push(cellsOf(each));
  }
  const area = (column: number) => ({
    sheet: sheetName,
    row: rowOfEntry(71),
    column,
    rows: 70,
    columns: 1,
  });
  return {
    name: sheetName,
    rows,
    columnWidths: [5, 11, 9, 9, 9, 9, 7, 7, 7, 11, 10, 7, 8, 8, 8, 12, 12, 9, 12, 28],
    tables: [],
    frozenRows: headingRow + 1,
    frozenColumns: 3,
    inputs: [
      {
        area: {
          row: rowOfEntry(1),
          column: 13,
          rows: rowOfEntry(entryCount) - rowOfEntry(1) + 1,
          columns: 1,
        },
        words: ["l", "imp gal"],
      },
    ],
    charts: [
      {
        title: "FFA through 2025",
        description: "Percent free fatty acid of each drum against its date, 2025.",
        acrossTitle: "Date",
        upTitle: "FFA, %",
        acrossFormat: "mmm yy",
        over: { row: 8, column: 30, rows: 18, columns: 8 },
        series: [
          {
            name: { sheet: sheetName, row: headingRow, column: 11 },
            across: area(1),
            up: area(11),
          },
        ],
      },
    ],
  };
}

const stores: BookSheet = {
  name: "Stores",
  rows: [
    [{ value: "Bag" }, { value: "Bought" }, { value: "Left kg" }],
    [{ value: "K-201" }, { value: 45_290, format: "dd/mm/yyyy" }, { value: 0 }],
    [{ value: "K-207" }, { value: 45_900, format: "dd/mm/yyyy" }, { value: 14.5 }],
  ],
  columnWidths: [10, 12, 10],
  tables: [],
  frozenRows: 0,
};

/** What was typed from paper holds figures, rounded as they were written, and no formulas. */
function typedFromPaper(book: Book): Book {
  const typedRows = new Set(
    oldEntries()
      .filter(({ isTyped }) => isTyped)
      .map(({ entry }) => rowOfEntry(entry)),
  );
  const asTyped = (cell: BookCell | null): BookCell | null => {
    const result = cell?.results?.[0]?.[0] ?? cell?.value;
    if (cell?.formula === undefined || typeof result !== "number") return cell;
    const places = (cell.format?.split(".")[1] ?? "").length;
    return { value: Number(result.toFixed(places)) };
  };
  const [log, ...others] = book.sheets as [BookSheet, ...BookSheet[]];
  // Weighed out and methanol were read off and typed in every row.
  const isRead = (column: number): boolean => column === 17 || column === 18;
  const rows = log.rows.map((row, at) =>
    row.map((cell, column) => (typedRows.has(at) || isRead(column) ? asTyped(cell) : cell)),
  );
  return { ...book, sheets: [{ ...log, rows }, ...others] };
}

export const oldLogbook: Sample = {
  file: "old-logbook.xlsx",
  async make() {
    const book = await computedBook({ name: "Oil book", sheets: [sheetOf(), stores] });
    return untidied(await fileOf(typedFromPaper(book)));
  },
};

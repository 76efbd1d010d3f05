/**
 * One logbook laid out in several ways says the same: the lots whose figures are wrong are the same ones,
 * and they are named from whichever cells they stand in. The figures are worked out by hand:
 * acid value = 56.1 x 0.1 x (mean titre - blank) / 10 g, FFA = acid value / 1.99 (56.1 / 28.2).
 */
import { describe, expect, it } from "vitest";
import { mappingFrom } from "../../../src/adopt/recognising/mapping";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue, SheetCells } from "../../../src/adopt/recognising/sheet-cells";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";

interface Lot {
  readonly day: number;
  readonly name: string;
  readonly titres: readonly [number, number, number];
  readonly blank: number;
  readonly acidValue: number;
}

/** The blank of SW-3 was not subtracted: 56.1 x 0.1 x 5.1 / 10 = 2.86. */
const lots: readonly Lot[] = [
  { day: 46_100, name: "SW-1", titres: [3.5, 3.6, 3.55], blank: 0.15, acidValue: 1.91 },
  { day: 46_103, name: "SW-2", titres: [4.2, 4.3, 4.25], blank: 0.25, acidValue: 2.24 },
  { day: 46_107, name: "SW-3", titres: [5.1, 5.05, 5.15], blank: 0.6, acidValue: 2.86 },
  { day: 46_110, name: "TW-4", titres: [2.8, 2.85, 2.9], blank: 0.15, acidValue: 1.51 },
  { day: 46_112, name: "TW-5", titres: [6.1, 6, 6.05], blank: 0.25, acidValue: 3.25 },
];

const date = "dd/mm/yyyy";

function sheetOf(rows: readonly (readonly LogbookValue[])[]): SheetCells {
  const width = Math.max(...rows.map((row) => row.length));
  const values = rows.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? ""));
  return {
    sheet: "Log",
    row: 0,
    column: 0,
    values,
    formulas: values.map((row) => row.map(() => "")),
    formats: values.map((row) =>
      row.map((each) => (typeof each === "number" && each > 40_000 ? date : "General")),
    ),
  };
}

const turned = (rows: readonly (readonly LogbookValue[])[]): LogbookValue[][] =>
  (rows[0] ?? []).map((_, at) => rows.map((row) => row[at] ?? ""));

const headings = ["Date", "Lot", "Sample g", "KOH mol/L", "Blank mL", "Acid value"];
const plain = [
  [...headings.slice(0, 4), "Titre 1 mL", "Titre 2 mL", "Titre 3 mL", ...headings.slice(4)],
  ...lots.map(({ day, name, titres, blank, acidValue }) => [
    day,
    name,
    10,
    0.1,
    ...titres,
    blank,
    acidValue,
  ]),
];

const inOneCell = (mark: string, comma: boolean) => [
  [...headings.slice(0, 4), "Titres mL", ...headings.slice(4)],
  ...lots.map(({ day, name, titres, blank, acidValue }) => [
    day,
    name,
    10,
    0.1,
    titres.map((each) => String(each).replace(".", comma ? "," : ".")).join(mark),
    blank,
    acidValue,
  ]),
];

/** @param how what stands in a lot's further rows where its name stood */
const oneRowEach = (how: "empty" | "ditto" | "again", resultIn: "first" | "last") => [
  [...headings.slice(0, 4), "Titre mL", ...headings.slice(4)],
  ...lots.flatMap(({ day, name, titres, blank, acidValue }) =>
    titres.map((titre, at) => {
      const said = (value: LogbookValue): LogbookValue =>
        at === 0 || how === "again" ? value : how === "ditto" ? '"' : "";
      const isResult = at === (resultIn === "first" ? 0 : titres.length - 1);
      return [
        said(day),
        said(name),
        said(10),
        said(0.1),
        titre,
        said(blank),
        isResult ? acidValue : "",
      ];
    }),
  ),
];

const blanksBeside = [
  [
    ...headings.slice(0, 4),
    "Titre 1 mL",
    "Titre 2 mL",
    "Titre 3 mL",
    "Acid value",
    "",
    "Date",
    "Blank mL",
  ],
  ...lots.map(({ day, name, titres, blank, acidValue }) => [
    day,
    name,
    10,
    0.1,
    ...titres,
    acidValue,
    "",
    day,
    blank,
  ]),
];

const withHeadingsAgain = [
  ...plain.slice(0, 4),
  ["Average", "", "", "", 3, "", "", "", 2.1],
  plain[0] ?? [],
  ...plain.slice(4),
];

const inTwoRows = [
  ["", "", "Sample", "KOH", "Titre", "Titre", "Titre", "Blank", "Acid"],
  ["Date", "Lot", "mass g", "mol/L", "1", "2", "3", "mL", "value"],
  ...plain.slice(1),
];

function found(rows: readonly (readonly LogbookValue[])[]) {
  const cells = sheetOf(rows);
  const books = recogniseSheet(cells)
    .filter(({ isLogbook }) => isLogbook)
    .map((guess) => ({ mapping: mappingFrom(guess), cells: guess.turned ?? cells }));
  return { report: recheckAtOnce(books), cells };
}

describe.each([
  ["three columns of titres", plain],
  ["titres in one cell, with strokes", inOneCell("/", false)],
  ["titres in one cell, with decimal commas", inOneCell("; ", true)],
  ["titres in one cell, with spaces", inOneCell(" ", false)],
  ["one row a titration, the lot named once", oneRowEach("empty", "first")],
  ["one row a titration, with ditto marks", oneRowEach("ditto", "first")],
  ["one row a titration, everything said again", oneRowEach("again", "first")],
  ["one row a titration, the result in the last", oneRowEach("empty", "last")],
  ["lots across", turned(plain)],
  ["the day's blanks in a table beside", blanksBeside],
  ["an average and the headings again in the middle", withHeadingsAgain],
  ["headings in two rows", inTwoRows],
] as const)("a logbook with %s", (_, rows) => {
  const { report, cells } = found(rows);

  it("has its five acid values checked", () => {
    expect(report.checked["acid value"]).toBe(5);
    expect(report.unchecked).toEqual([]);
  });

  it("has the one lot found whose blank was not subtracted, in its own cell", () => {
    expect(report.findings.map(({ label, mistake, held }) => [label, mistake, held])).toEqual([
      ["SW-3", "blank-not-subtracted", "2.86"],
    ]);
    const [finding] = report.findings;
    expect(cells.values[finding?.row ?? 0]?.[finding?.column ?? 0]).toBe(2.86);
  });
});

describe("lots across, under the title of the sheet", () => {
  it("have no column made of the title, though it names an oil", () => {
    const [guess] = recogniseSheet(sheetOf([["Frying oil 2026"], ...turned(plain)]));
    expect(guess?.isAcross).toBe(true);
    expect(guess?.columns.map(({ heading }) => heading)).toEqual(plain[0]);
  });
});

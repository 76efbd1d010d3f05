/** Logbooks of one titration and one batch a row, as one maker or another would lay them out and head them. */
import { withAnswer } from "../../adopt/recognising/answers";
import { type LogbookMapping, mappingFrom } from "../../adopt/recognising/mapping";
import { recogniseSheet } from "../../adopt/recognising/recognise";
import type { LogbookValue, SheetCells } from "../../adopt/recognising/sheet-cells";
import type { Logbook } from "../../adopt/recheck/recheck";
import { rounded, type Worked } from "./recheck-rows";

export interface Layout {
  readonly name: string;
  readonly headings: readonly string[];
  /** The rows that one titration takes. */
  readonly rows: (worked: Worked) => readonly (readonly LogbookValue[])[];
  /** What is answered of its words. */
  readonly answers?: Parameters<typeof withAnswer>[1][];
}

const english = ["Lot", "Titre 1 mL", "Titre 2 mL", "Blank mL", "Sample g", "Titrant mol/L"];
const worked = ["Acid value mg KOH/g", "FFA %", "Oil kg", "Base", "Assay %", "Base charge % pure"];

const before = ({ lot, titres: [one, two] }: Worked) => [lot, one, two, 0.15, 7.05, 0.1];
const behind = ({ acidValue, ffa, kilograms, lye }: Worked): LogbookValue[] => [
  acidValue,
  ffa,
  kilograms,
  "KOH",
  90,
  0.765,
  lye,
];

export const layouts: readonly Layout[] = [
  {
    name: "headed in English",
    headings: [...english, ...worked, "KOH total g"],
    rows: (row) => [[...before(row), ...behind(row)]],
  },
  {
    name: "headed in German",
    headings: [
      ...["Charge", "Titration 1 ml", "Titration 2 ml", "Blindwert ml", "Einwaage g"],
      ...["Maßlösung mol/l", "Säurezahl", "FFS %", "Öl kg", "Base", "Gehalt %"],
      ...["Grunddosis % rein", "KOH gesamt g"],
    ],
    rows: (row) => [[...before(row), ...behind(row)]],
  },
  {
    name: "titres in one cell",
    headings: ["Lot", "Titres mL", ...english.slice(3), ...worked, "KOH total g"],
    rows: (row) => [[row.lot, row.titres.join(" / "), 0.15, 7.05, 0.1, ...behind(row)]],
  },
  {
    name: "a lot over several rows",
    headings: ["Lot", "Titre mL", ...english.slice(3), ...worked, "KOH total g"],
    rows: (row) => [
      [row.lot, row.titres[0], 0.15, 7.05, 0.1, ...behind(row)],
      ["", row.titres[1], "", "", "", "", "", "", "", "", "", ""],
    ],
  },
  {
    name: "with methanol and water",
    headings: [...english, ...worked, "KOH total g", "Methanol L", "Water ppm"],
    rows: (row) => [[...before(row), ...behind(row), rounded(row.kilograms * 0.24, 1), 420]],
  },
  {
    name: "in drums and cups",
    headings: [...english, ...worked.slice(0, 2), "Oil (drums)", ...worked.slice(3), "KOH (cups)"],
    rows: (row) => [
      [
        ...before(row),
        ...behind(row).slice(0, 2),
        rounded(row.kilograms / 0.915 / 205, 4),
        ...behind(row).slice(3, 6),
        rounded(row.lye / 190, 3),
      ],
    ],
    answers: [
      { ask: "unit", word: "drums", litres: "205" },
      { ask: "size", word: "cup", in: "g", size: "190" },
    ],
  },
];

function cellsOf(values: readonly (readonly LogbookValue[])[]): SheetCells {
  const same = (content: string) => values.map((cells) => cells.map(() => content));
  return {
    sheet: "Log",
    row: 0,
    column: 0,
    values,
    formulas: same(""),
    formats: same("General"),
  };
}

/** What the columns are is told from so many rows: recognising is not what is timed. */
const recognised = 60;

function mappingOf({ name, answers = [] }: Layout, cells: SheetCells): LogbookMapping {
  const first = cellsOf(cells.values.slice(0, recognised + 1));
  const [guess] = recogniseSheet(first);
  const mapping = guess && answers.reduce(withAnswer, mappingFrom(guess));
  const holds = (role: string): boolean =>
    mapping?.columns.some((each) => each.role === role) ?? false;
  if (!mapping || !["titre", "acidValue", "catalyst", "assay"].every(holds))
    throw new Error(`the logbook ${name} is not recognised`);
  return { ...mapping, place: { ...mapping.place, lastRow: cells.values.length - 1 } };
}

/** @param titrations as they were worked out; a titration may take more than one row */
export function logbookOf(layout: Layout, titrations: readonly Worked[]): Logbook {
  const cells = cellsOf([layout.headings, ...titrations.flatMap(layout.rows)]);
  return { mapping: mappingOf(layout, cells), cells };
}

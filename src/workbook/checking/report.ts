/** What the check saw, as one sheet to send back, and that sheet read again. */
import { version as ofTitrebook } from "../../partner/sharing/version";
import type { BookCell, BookSheet } from "../../sheet/book";
import type { CellContent } from "../../sheet/port";
import type { ProgramFacts } from "../../sheet/port/checked-program";
import { heading, title, words } from "../sample/cells";
import { checkLines, type Colour, type Seen } from "./lines";

export const reportSheet = "Titrebook check";

/** Where it was, by what it is called on the sheet. */
export interface Surroundings {
  readonly titrebook: string;
  readonly program: string;
  readonly platform: string;
  readonly engine: string;
  /** 2026-05-04. */
  readonly day: string;
}

export interface Report {
  readonly where: Surroundings;
  readonly seen: readonly Seen[];
}

const called: Readonly<Record<keyof Surroundings, string>> = {
  titrebook: "Titrebook",
  program: "Excel",
  platform: "Platform",
  engine: "What shows the pane",
  day: "Day",
};
const abouts = Object.keys(called) as (keyof Surroundings)[];

export const surroundingsOf = (facts: ProgramFacts, day: string): Surroundings => ({
  titrebook: ofTitrebook,
  program: facts.version,
  platform: facts.platform,
  engine: facts.engine,
  day,
});

/** What a colour means, so that nothing is said by colour alone. */
export const meaning: Readonly<Record<Colour, string>> = {
  green: "green: as it must be",
  amber: "amber: not seen, or to be looked at",
  red: "red: not as it must be",
};

const looks = { green: "calculated", amber: "input", red: "caution" } as const;

const headings = ["Line", "What was looked at", "Colour", "What was seen"];

const rowOf = ({ id, colour, words: saw }: Seen): BookCell[] => [
  words(id),
  words(checkLines.find((line) => line.id === id)?.name ?? ""),
  { value: meaning[colour], style: looks[colour] },
  words(saw),
];

export const sheetOfReport = ({ where, seen }: Report): BookSheet => ({
  name: reportSheet,
  rows: [
    [title("Titrebook in this Excel")],
    [
      words(
        "Made in an empty workbook: versions and what was seen, and nothing of any logbook. Save this workbook and send it to whoever looks after Titrebook.",
      ),
    ],
    [],
    ...abouts.map((about) => [words(called[about]), words(where[about])]),
    [],
    headings.map((head) => heading(head)),
    ...seen.map(rowOf),
  ],
  columnWidths: [18, 34, 34, 90],
  tables: [],
  frozenRows: 0,
});

const colourOf = (cell: CellContent | undefined): Colour | undefined =>
  (Object.keys(meaning) as Colour[]).find((colour) => String(cell).startsWith(colour));

/**
 * @param rows what stands in the cells of the sheet, row by row
 * @returns undefined when it is no sheet of the check
 */
export function readReport(
  rows: readonly (readonly (CellContent | undefined)[])[],
): Report | undefined {
  const head = rows.findIndex((row) => headings.every((each, column) => row[column] === each));
  if (head < 0) return undefined;
  const about = (name: string): string => String(rows.find((row) => row[0] === name)?.[1] ?? "");
  const where: Surroundings = {
    titrebook: about(called.titrebook),
    program: about(called.program),
    platform: about(called.platform),
    engine: about(called.engine),
    day: about(called.day),
  };
  const seen = rows.slice(head + 1).flatMap(([name, , colour, saw]): Seen[] => {
    const line = checkLines.find(({ id }) => id === name);
    const found = colourOf(colour);
    return line && found ? [{ id: line.id, colour: found, words: String(saw ?? "") }] : [];
  });
  return { where, seen };
}

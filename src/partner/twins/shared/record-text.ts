/** Earlier titrations, one a row, in helper cells: squares and degrees of freedom of each row. */
import { neutralisedWords } from "../../../core/titration/neutralised";
import type { TwinArgument } from "../../../functions/twin";
import { isAbove } from "./blanks";
import { constantOf } from "./constant";
import { cellsOf, checked, filledIn } from "./list";
import { isOneCell } from "./pairs";
import type { Reading } from "./reading";
import { squaresAbout } from "./scatter";
import { always, and, isEmpty, isWithin, never, or, plainSpaces, text, when, wrong } from "./text";

export interface RecordText {
  /** All readings, checked; empty where not filled in. */
  readonly readings: readonly string[];
  readonly squares: string;
  readonly freedom: string;
}

const isWord = (cell: string): string =>
  or(...neutralisedWords.map((word) => `LOWER(TRIM(${plainSpaces(cell)}))=${text(word)}`));

const rowOf = (range: TwinArgument, row: number): string[] =>
  Array.from({ length: range.columns }, (_, column) => range.cell(row, column));

/** The argument where it is there: written into the formula, its own reader says whether it may be. */
function rangeOf(reading: Reading, name: string): TwinArgument | undefined {
  const isTaken = reading.entry.arguments.some((each) => each.name === name);
  const range = isTaken ? reading.call.argument(name) : undefined;
  if (range) reading.constants(name, range);
  return range;
}

/** A single mass serves all, and changes nothing: only whether it may stand there is asked. */
function ownMasses(reading: Reading, titres: TwinArgument): TwinArgument | undefined {
  const name = "sampleMassSets";
  const masses = rangeOf(reading, name);
  if (!masses) return undefined;
  if (!isOneCell(masses)) {
    if (masses.rows === titres.rows) return masses;
    reading.allow(`${filledIn(masses)}=0`);
    return undefined;
  }
  const cell = masses.cell(0, 0);
  const { limits } = reading.reader(name);
  reading.allow(or(isEmpty(cell), limits ? isWithin(cell, limits) : never));
  reading.allow(constantOf(cell) ? always : `NOT(ISLOGICAL(${cell}))`);
  return undefined;
}

/** The blanks of one row: the word is none, and stands alone. */
function blanksOfRow(reading: Reading, cells: readonly string[], row: number): TwinArgument {
  const said = reading.call.helper(
    `is the word neutralised in row ${row + 1}?`,
    or(...cells.map(isWord)),
  );
  return reading.call.helperColumn(
    `blank of titration ${row + 1}, mL`,
    cells.map((cell) => {
      const figure = checked(reading, "blankSets", cell);
      return when(or(isEmpty(cell), isWord(cell)), '""', when(said, wrong, figure));
    }),
  );
}

/** Each titre as it compares with the others of its row. */
function comparable(
  reading: Reading,
  titres: TwinArgument,
  blank: string,
  masses: readonly string[] | undefined,
  row: number,
): TwinArgument {
  const { helper, helperColumn } = reading.call;
  const label = `titre of titration ${row + 1} as it compares, mL`;
  const net = (place: number, value: string): string => {
    const titre = titres.cell(place, 0);
    return when(`${titre}=""`, '""', when(isAbove(titre, blank), value, wrong));
  };
  const places = cellsOf(titres).map((_, place) => place);
  if (!masses)
    return helperColumn(
      label,
      places.map((place) => net(place, titres.cell(place, 0))),
    );
  const own = helperColumn(
    `sample mass of titration ${row + 1}, g`,
    masses.map((cell) => checked(reading, "sampleMassSets", cell)),
  );
  const mean = helper(
    `mean sample mass of titration ${row + 1}, g; 0 where one served all`,
    `IF(COUNT(${own.text})<2,0,AVERAGE(${own.text}))`,
  );
  return helperColumn(
    label,
    Array.from({ length: Math.max(titres.rows, own.rows) }, (_, place) => {
      const mass = place < own.rows ? own.cell(place, 0) : '""';
      const isRead = place < titres.rows ? `${titres.cell(place, 0)}<>""` : never;
      const isAlone = `AND(${mean}>0,${isRead}<>(${mass}<>""))`;
      if (place >= titres.rows) return when(isAlone, wrong, '""');
      const titre = titres.cell(place, 0);
      const scaled = `IF(${mean}=0,${titre},(${titre}-${blank})*${mean}/${mass})`;
      return when(isAlone, wrong, net(place, scaled));
    }),
  );
}

export function recordText(reading: Reading): RecordText | undefined {
  const sets = rangeOf(reading, "titreSets");
  if (!sets) {
    reading.meaning("titreSets", undefined);
    return undefined;
  }
  const [blankSets, massSets] = [rangeOf(reading, "blankSets"), ownMasses(reading, sets)];
  if (blankSets && blankSets.rows !== sets.rows) {
    reading.refuse(wrong);
    return undefined;
  }
  const { helper, helperColumn } = reading.call;
  const readings: string[] = [];
  const counts: string[] = [];
  const rows = Array.from({ length: sets.rows }, (_, row) => {
    const titres = helperColumn(
      `titre of titration ${row + 1}, mL`,
      rowOf(sets, row).map((cell) => checked(reading, "titreSets", cell)),
    );
    readings.push(...cellsOf(titres));
    counts.push(`COUNT(${titres.text})`);
    const blanks = blankSets && blanksOfRow(reading, rowOf(blankSets, row), row);
    if (blanks) readings.push(...cellsOf(blanks));
    const blank = blanks
      ? helper(
          `mean blank of titration ${row + 1}, mL`,
          `IF(COUNT(${blanks.text})=0,0,AVERAGE(${blanks.text}))`,
        )
      : "0";
    const masses = massSets && rowOf(massSets, row);
    const compared = comparable(reading, titres, blank, masses, row);
    return [compared, ...(blanks ? [blanks] : [])];
  });
  const each = (of: (column: string) => string) =>
    rows.map((columns) =>
      when(
        and(...columns.map(({ text: all }) => `ISNUMBER(SUM(${all}))`)),
        columns.map(({ text: all }) => of(all)).join("+"),
        wrong,
      ),
    );
  const squares = helperColumn(
    "sum of squares of a titration about its own mean",
    each((all) => `IF(COUNT(${all})<2,0,${squaresAbout(all)})`),
  );
  const freedom = helperColumn(
    "degrees of freedom of a titration",
    each((all) => `MAX(0,COUNT(${all})-1)`),
  );
  const filled = helperColumn("titres of a titration", counts);
  const all = helper("degrees of freedom together", `SUM(${freedom.text})`);
  reading.needs(`${all}=0`);
  reading.needs(`SUM(${filled.text})=0`);
  return { readings, squares: helper("squares together", `SUM(${squares.text})`), freedom: all };
}

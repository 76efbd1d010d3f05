/** A re-check at a glance: which mistakes, how many, grams over and under, and when. */
import { dateHabit } from "../../adopt/recognising/date-habit";
import { columnOf } from "../../adopt/recognising/mapping";
import { heldCell } from "../../adopt/recognising/sheet-cells";
import { dateFrom } from "../../adopt/recognising/typed-date";
import { mistakeOf } from "../../adopt/recheck/mistakes/all";
import { causeWords, mistakesIn } from "../../adopt/recheck/reporting/cause-words";
import type { Finding, RecheckReport } from "../../adopt/recheck/reporting/finding";
import type { Logbook } from "../../adopt/recheck/recheck";
import { dayInWords } from "../../workbook/over-time/day-words";

interface Grams {
  /** g of lye, of all batches. */
  readonly under: number;
  readonly over: number;
}

/** All findings of one cause: one mistake, two together, or one of several that may be it. */
export interface Kind extends Grams {
  readonly words: string;
  /** What went wrong, a sentence for each mistake. */
  readonly sentences: readonly string[];
  /** The worst first. */
  readonly findings: readonly Finding[];
}

interface MonthLine extends Grams {
  /** "May 2026" */
  readonly month: string;
  readonly rows: number;
}

const rowOf = ({ sheet, row }: Finding): string => `${sheet} ${String(row)}`;

const ofBatch = ({ effect }: Finding): number => (effect?.of === "batch" ? effect.grams : 0);

/** What one mistake makes of what its row is off; undefined where several are not told apart. */
function ownGrams(finding: Finding): number | undefined {
  const { effect } = finding;
  if (effect?.of !== "batch") return 0;
  return effect.together ? effect.together.ofIt : effect.grams;
}

/** The same of mistakes that are not told apart. */
const ofSeveral = (finding: Finding): number => finding.effect?.together?.ofIt ?? ofBatch(finding);

/** A row's lye is off once, however many of its figures are wrong: by the largest of what was found. */
function gramsOf(findings: readonly Finding[], of: (finding: Finding) => number): Grams {
  const byRow = new Map<string, number>();
  for (const finding of findings) {
    const key = rowOf(finding);
    const known = byRow.get(key) ?? 0;
    const grams = of(finding);
    if (Math.abs(grams) > Math.abs(known)) byRow.set(key, grams);
  }
  const all = [...byRow.values()];
  const sum = (some: readonly number[]): number => some.reduce((total, each) => total + each, 0);
  return {
    under: sum(all.filter((each) => each < 0).map(Math.abs)),
    over: sum(all.filter((each) => each > 0)),
  };
}

const size = ({ effect }: Finding): number => Math.abs(effect?.grams ?? 0);
const worstFirst = (one: Finding, other: Finding): number =>
  size(other) - size(one) ||
  one.sheet.localeCompare(other.sheet) ||
  one.row - other.row ||
  one.column - other.column;

/** What was found by its cause, the one that did most to the lye first. */
export function kindLines({ findings }: RecheckReport): readonly Kind[] {
  const byCause = new Map<string, Finding[]>();
  for (const each of findings) {
    const words = causeWords(each);
    const known = byCause.get(words);
    if (known) known.push(each);
    else byCause.set(words, [each]);
  }
  return [...byCause]
    .map(([words, all]) => ({
      words,
      sentences: [...new Set(all.flatMap(mistakesIn))].map((id) => mistakeOf(id).sentence),
      findings: [...all].sort(worstFirst),
      ...gramsOf(all, (each) => ownGrams(each) ?? 0),
    }))
    .sort(
      (one, other) =>
        other.under + other.over - one.under - one.over ||
        other.findings.length - one.findings.length,
    );
}

/** Of all rows together: what stands below the lines of the kinds. */
export const allGrams = ({ findings }: RecheckReport): Grams => gramsOf(findings, ofBatch);

/** Grams of rows with several mistakes that cannot be told apart: counted here, and with none of them. */
export function severalLine({ findings }: RecheckReport): Grams | undefined {
  const several = findings.filter((each) => ownGrams(each) === undefined);
  return several.length === 0 ? undefined : gramsOf(several, ofSeveral);
}

/** The day of a finding's row; undefined where no column says it, or lots stand across. */
function dayReader({ mapping, cells }: Logbook): (row: number) => number | undefined {
  const date = columnOf(mapping, "date");
  if (!date || cells.isAcross === true) return () => undefined;
  const { order } = dateHabit(mapping, cells);
  return (row) => {
    const { value, format } = heldCell(cells, row, date.column);
    return dateFrom(value, format, order);
  };
}

/** By month, the first one first; empty where nothing says when. */
export function monthLines(
  { findings }: RecheckReport,
  logbooks: readonly Logbook[],
): readonly MonthLine[] {
  const readers = logbooks.map((book) => ({ book, day: dayReader(book) }));
  const months = new Map<string, { first: number; findings: Finding[] }>();
  for (const finding of findings) {
    const day = readers
      .filter(({ book: { mapping } }) => mapping.sheet === finding.sheet)
      .map((each) => each.day(finding.row))
      .find((each) => each !== undefined);
    if (day === undefined) continue;
    const month = dayInWords(day).replace(/^\d+ /, "");
    const known = months.get(month) ?? { first: day, findings: [] };
    known.first = Math.min(known.first, day);
    known.findings.push(finding);
    months.set(month, known);
  }
  return [...months]
    .sort(([, one], [, other]) => one.first - other.first)
    .map(([month, each]) => ({
      month,
      rows: new Set(each.findings.map(rowOf)).size,
      ...gramsOf(each.findings, ofBatch),
    }));
}

/** What LibreOffice shows in columns that were added to a made logbook, or put right, beside the same by hand. */
import type { AddedId } from "../../src/adopt/added-columns/added";
import type { Key } from "../adopt/habits/columns";
import { type ByHand, byHand } from "../adopt/habits/by-hand";
import type { MadeLogbook, RowTruth } from "../adopt/habits/logbook";
import type { Asked } from "./habit-books";
import type { Shown } from "./xlsx/libreoffice";

export interface Seen {
  figures: number;
  mended: number;
  /** Rows where no one figure is known to be right: the cell says why. */
  undecided: number;
  /** Columns that cannot be had, each with its reason. */
  lacking: number;
  /** Sheets beside which something is in the way, with the sentence. */
  refused: number;
  readonly wrong: string[];
}

export const nothingSeen = (): Seen => ({
  figures: 0,
  mended: 0,
  undecided: 0,
  lacking: 0,
  refused: 0,
  wrong: [],
});

const perUnit: Readonly<Record<string, number>> = {
  kg: 1000,
  lb: 453.59237,
  oz: 28.349523125,
};

/** Handbooks round molar masses to six digits. */
const handbook = 2e-6;

/** % FFA above which an oil is not made with lye alone (common practice, no source). */
const mostFfa = 5;

const isFigure = (id: AddedId): id is AddedId & keyof ByHand =>
  id !== "verdict" && id !== "ffaUncertainty";

/** As the csv shows it: 1.02% in a cell that shows percentages. */
const figureIn = (text: string): number =>
  text === "" ? NaN : text.endsWith("%") ? Number(text.slice(0, -1)) / 100 : Number(text);

/** The figure in the unit that the heading names. */
function inUnitOf(heading: string, id: AddedId, value: number): number {
  const unit = heading.split(", ").at(-1) ?? "";
  return id === "catalyst" ? value / (perUnit[unit] ?? 1) : value;
}

function judgeAdded(
  { made, at, kind, name, offered }: Asked,
  shown: Shown,
  first: number,
  seen: Seen,
) {
  const added = offered.filter(({ formula }) => formula !== undefined);
  for (const { formula, lacks, id } of offered) {
    if (formula === undefined) seen.lacking += 1;
    if ((formula === undefined) !== (lacks !== ""))
      seen.wrong.push(`${name}: ${id} has no reason, or one too many: ${lacks}`);
  }
  const { headingRow = 0, lastRow = 0 } = made.sheets[at] ?? {};
  const own = new Set(made.rows.map(({ titrationRow }) => titrationRow));
  for (let row = headingRow + 1; row <= lastRow; row += 1) {
    const held = shown[row]?.slice(first, first + added.length).join("") ?? "";
    if (!own.has(row) && held !== "")
      seen.wrong.push(`${name} row ${String(row + 1)}: ${held}, without a reading`);
  }
  for (const { titrationRow: row } of made.rows) {
    const right = byHand(made, at, row);
    added.forEach(({ id, heading, formula }, column) => {
      const found = shown[row]?.[first + column] ?? "";
      const place = `${name} row ${String(row + 1)} ${heading}: ${found}`;
      if (!isFigure(id)) {
        if (found === "" || /^(?:#|Err)/.test(found)) seen.wrong.push(place);
        return;
      }
      const should = inUnitOf(heading, id, right[id]);
      // Our function makes no dose of such an oil, and says why.
      if (kind === "functions" && id === "catalyst" && right.ffa > mostFfa) {
        if (!/^(?:#|Err)/.test(found)) seen.wrong.push(`${place}, and no refusal`);
        return;
      }
      seen.figures += 1;
      if (!(Math.abs(figureIn(found) / should - 1) < handbook))
        seen.wrong.push(`${place}, not ${String(should)} ${formula?.(row + 1) ?? ""}`);
    });
  }
}

/** What a column that was put right ought to hold in a row, in the column's unit; NaN: not judged here. */
function rightFor(made: MadeLogbook, key: Key, truth: RowTruth): number {
  const { habit } = made;
  const hand = byHand(made, 0, truth.titrationRow);
  switch (key) {
    case "net":
      return hand.correctedTitre;
    case "acidValue":
      return hand.acidValue;
    case "ffa":
      return habit.ffaIn === "%" ? hand.ffa : hand.ffa / 100;
    case "total":
      return truth.right / (perUnit[habit.doseUnit] ?? 1);
    default:
      return NaN;
  }
}

/** Coefficients and roundings of the trade lie this far apart (0.197 and 56.1053/282 g of KOH for a gram). */
const custom = 0.02;

function judgeMended({ made, at, name, findings, mended, plan }: Asked, shown: Shown, seen: Seen) {
  if (!("block" in plan)) return;
  const own = made.sheets[at];
  for (const truth of made.rows) {
    const row = truth.titrationRow;
    mended.forEach((column, across) => {
      const key = own?.columns[column]?.key;
      const was = own?.cells.values[row]?.[column] ?? "";
      const text = shown[row]?.[plan.block.column + across] ?? "";
      const digits = own?.columns[column]?.digits ?? 2;
      const place = `${name} row ${String(row + 1)} ${String(key)} put right: ${text}`;
      const finding = findings.find((each) => each.row === row && each.column === column);
      if (
        finding?.role !== "weighed" &&
        (finding?.oddInput ?? / or /.exec(finding?.should ?? ""))
      ) {
        seen.undecided += 1;
        const reason = finding?.oddInput ?? `${finding?.should ?? ""}: say in Check columns`;
        if (!text.startsWith(reason)) seen.wrong.push(`${place}, and no reason`);
        return;
      }
      if (!finding || finding.role === "weighed") {
        const isSame =
          typeof was === "number"
            ? Math.abs(figureIn(text) - was) <= 1e-9 * Math.abs(was)
            : text === was;
        if (!isSame) seen.wrong.push(`${place}, was ${String(was)}`);
        return;
      }
      const should = key === undefined ? NaN : rightFor(made, key, truth);
      if (Number.isNaN(should)) {
        if (Number.isNaN(figureIn(text))) seen.wrong.push(`${place}, no figure`);
        return;
      }
      seen.mended += 1;
      const most = custom * Math.abs(should) + 10 ** -digits;
      if (!(Math.abs(figureIn(text) - should) <= most))
        seen.wrong.push(
          `${place}, not ${String(should)} (${truth.mistake ?? "honest"}), was ${String(was)}`,
        );
    });
  }
}

export function judge(asked: Asked, shown: Shown | undefined, seen: Seen): void {
  const { plan, kind, name, mended, offered } = asked;
  if (!("block" in plan)) {
    const isNothing =
      kind === "put right" ? mended.length === 0 : offered.every((each) => !each.formula);
    if (!isNothing) seen.refused += 1;
    if (plan.sentence === "") seen.wrong.push(`${name}: refused without a word`);
    return;
  }
  if (!shown) seen.wrong.push(`${name}: not shown`);
  else if (kind === "put right") judgeMended(asked, shown, seen);
  else judgeAdded(asked, shown, plan.block.column, seen);
}

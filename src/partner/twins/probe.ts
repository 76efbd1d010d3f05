/** Twins of the functions of a probe: slopes step by step, and where the curve is steepest. */
import { besideSteepest, fewestForSlope, fewestPoints } from "../../core/titration/probe";
import type { TwinArgument } from "../../functions/twin";
import { cellsOf, checked } from "./shared/list";
import { canPair, nothing } from "./shared/pairs";
import type { Reading } from "./shared/reading";
import { when, wrong } from "./shared/text";
import type { Work } from "./shared/work";

/** Slopes of so nearly one size are one: the first of them counts. */
const nearly = "1E-12";

interface Steps {
  readonly count: string;
  readonly middles: TwinArgument;
  readonly slopes: TwinArgument;
}

const names = ["volumes", "readings"] as const;

/** The pairs that are filled in, one after another, and the steps between them. */
function stepsOf(reading: Reading): Steps | undefined {
  const given = names.map((name) => reading.call.argument(name));
  const [volumes, readings] = given;
  if (!volumes || !readings) {
    for (const name of names) if (!reading.call.argument(name)) reading.meaning(name, undefined);
    return undefined;
  }
  if (!canPair(volumes, readings)) reading.refuse(wrong);
  const { helper, helperColumn } = reading.call;
  const columns = names.map((name, place) =>
    helperColumn(
      place === 0 ? "titrant given, mL, as read" : "what the probe showed, as read",
      cellsOf(given[place] ?? volumes).map((cell) => checked(reading, name, cell)),
    ),
  );
  for (const { text } of columns) reading.needs(`COUNT(${text})=0`);
  const [all, shown] = columns as [TwinArgument, TwinArgument];
  const rows = Math.min(all.rows, shown.rows);
  const each = (of: (row: number) => string, length = rows) =>
    Array.from({ length }, (_, row) => of(row));
  const places = helperColumn(
    "place of a pair that is filled in",
    each((row) => {
      const isGap = `OR(${all.cell(row, 0)}="",${shown.cell(row, 0)}="")`;
      return when(isGap, '""', String(row + 1));
    }),
  );
  // a cell beyond the shorter of two lines is still a cell that must be allowed
  const sums = [places, all, shown].map(({ text }) => `SUM(${text})`).join("+");
  const count = helper(
    "pairs: how many",
    when(`ISNUMBER(${sums})`, `COUNT(${places.text})`, wrong),
  );
  reading.allow(`ISNUMBER(${count})`);
  const inOrder = (label: string, column: TwinArgument) =>
    helperColumn(
      label,
      each((row) =>
        when(`${row}>=${count}`, '""', `INDEX(${column.text},SMALL(${places.text},${row + 1}))`),
      ),
    );
  const x = inOrder("titrant given, mL, pair by pair", all);
  const y = inOrder("what the probe showed, pair by pair", shown);
  if (rows < fewestForSlope) return undefined;
  const step = (of: (from: number, to: number) => string) =>
    each((row) => when(`${x.cell(row + 1, 0)}=""`, '""', of(row, row + 1)), rows - 1);
  const middles = helperColumn(
    "middle of the step, mL",
    step((from, to) => `(${x.cell(from, 0)}+${x.cell(to, 0)})/2`),
  );
  const slopes = helperColumn(
    "slope of the step, for each mL",
    step((from, to) => {
      const wide = `(${x.cell(to, 0)}-${x.cell(from, 0)})`;
      return when(`${wide}>0`, `(${y.cell(to, 0)}-${y.cell(from, 0)})/${wide}`, wrong);
    }),
  );
  reading.allow(`ISNUMBER(SUM(${slopes.text}))`);
  return { count, middles, slopes };
}

export const steepness: Work = (reading) => {
  const steps = stepsOf(reading);
  if (!steps) return nothing;
  const { count, middles, slopes } = steps;
  reading.needs(`${count}<${fewestForSlope}`);
  return reading.table(cellsOf(middles).map((middle, row) => [middle, slopes.cell(row, 0)]));
};

export const endPoint: Work = (reading) => {
  const steps = stepsOf(reading);
  if (!steps) return nothing;
  const { count, middles, slopes } = steps;
  const { helper, helperColumn } = reading.call;
  const sizes = helperColumn(
    "size of the slope",
    cellsOf(slopes).map((slope) => when(`${slope}=""`, '""', `ABS(${slope})`)),
  );
  const most = helper("the steepest", `MAX(${sizes.text})`);
  const marked = helperColumn(
    "place of a step as steep as the steepest",
    cellsOf(sizes).map((size, row) =>
      when(`${size}=""`, '""', when(`${size}>=${most}*(1-${nearly})`, String(row + 1), '""')),
    ),
  );
  const place = helper("the first of them", `MIN(${marked.text})`);
  reading.allow(
    `${count}>=${fewestPoints}`,
    `${most}>0`,
    `${place}>${besideSteepest}`,
    `${place}<=${count}-1-${besideSteepest}`,
  );
  const around = (label: string, column: TwinArgument) =>
    [-1, 0, 1].map((beside) =>
      helper(
        `${label} ${["before the steepest", "of the steepest", "after the steepest"][beside + 1] ?? ""}`,
        reading.guarded(`INDEX(${column.text},${place}+(${beside}))`),
      ),
    ) as [string, string, string];
  const [before, at, after] = around("slope", slopes);
  const [left, middle, right] = around("middle, mL,", middles);
  const rising = helper("second difference before", `(${at}-${before})/(${middle}-${left})`);
  const falling = helper("second difference after", `(${after}-${at})/(${right}-${middle})`);
  const from = `(${left}+${middle})/2`;
  return reading.answer(`${from}+(${right}-${left})/2*${rising}/(${rising}-${falling})`);
};

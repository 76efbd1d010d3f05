/** The twin of WHATIF: a dose for each amount and acid value, or the limit's message. */
import { exact } from "../../core/exact/exact";
import { problem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { as } from "../../core/quantity/quantity";
import type { AmountUnit } from "../../core/quantity/units";
import { limits } from "../../core/reference/limits";
import { corner } from "../../functions/batch/what-if";
import { kilogramsInOne } from "./amounts";
import { dose, ffaAsOleic } from "./shared/doses";
import { cellsOf, listOf } from "./shared/list";
import type { Reading } from "./shared/reading";
import { exactly } from "./shared/shown-text";
import { atMost, isEmpty, significant, spoken, when } from "./shared/text";
import { wordOf } from "./shared/word";
import type { Work } from "./shared/work";
import { baseMass, baseOf } from "./shared/words";

/** Figures of a range one after another, cells not filled in left out and empty at the end. */
function inOrder(reading: Reading, name: string, label: string): string[] {
  const { range, count } = listOf(reading, name);
  reading.passOn(count);
  const { helper, helperColumn } = reading.call;
  const cells = cellsOf(range);
  if (cells.length === 1) return cells;
  const places = helperColumn(
    `${label}: places filled in`,
    cells.map((cell, place) => when(isEmpty(cell), '""', String(place + 1))),
  );
  const figures = helperColumn(
    label,
    cells.map((cell) => when(isEmpty(cell), '""', cell)),
  );
  return cells.map((_, place) => {
    const found = `INDEX(${figures.text},SMALL(${places.text},${place + 1}))`;
    return helper(`${label} ${place + 1}`, when(`${place}<${count}`, found, '""'));
  });
}

/** Figures that stand for the two in the message, to be put in by the formula. */
const [anyFfa, anyLimit] = ["88", "77"];
/** Digits of a figure in a sentence. */
const digits = 10;
const fewest = 2;

/** The limit's message, as the cells of the function say it. */
function aboveLimit(reading: Reading, ffa: string, limit: string): string {
  const tried = Array.from({ length: digits - fewest }, (_, place) => place + fewest);
  const shortest = tried.reduceRight(
    (otherwise, each) => {
      const rounded = significant(ffa, each);
      return when(`${rounded}>${limit}`, rounded, otherwise);
    },
    significant(ffa, digits),
  );
  const said = say(
    problem({
      code: "acid-above-limit",
      ffaPercent: as("%", exact(anyFfa)),
      limitPercent: as("%", exact(anyLimit)),
    }),
  );
  return spoken(
    (shown, most) => said.replace(anyFfa, shown).replace(anyLimit, most),
    exactly(reading, reading.call.helper("that, as shown", when(`${ffa}=""`, '""', shortest))),
    exactly(reading, limit),
  );
}

export const whatIf: Work = (reading) => {
  const { helper } = reading.call;
  const amounts = inOrder(reading, "amounts", "amount");
  const unit = wordOf<AmountUnit>(reading, "unit");
  const inOne = kilogramsInOne(reading);
  const values = inOrder(reading, "acidValues", "acid value, mg KOH/g");
  const base = baseMass(baseOf(reading));
  const assay = reading.figure("assayPercent");
  const charge = reading.figure("baseCharge");
  const limit = reading.figure("limitFfaPercent");
  const masses = amounts.map((amount, place) =>
    helper(`oil ${place + 1}, kg`, when(`${amount}=""`, '""', `${amount}*${inOne}`)),
  );
  reading.allow(`MAX(${masses.join(",")})<=${limits.oilMass.to}`);

  const messages = values.map((value, place) => {
    const ffa = helper(
      `FFA as oleic of acid value ${place + 1}, %`,
      when(`${value}=""`, '""', ffaAsOleic(value)),
    );
    const message = when(atMost(ffa, limit), '""', aboveLimit(reading, ffa, limit));
    return helper(`message of acid value ${place + 1}`, when(`${ffa}=""`, '""', message));
  });
  const cell = (mass: string, place: number): string => {
    const value = values[place] ?? "0";
    const message = messages[place] ?? '""';
    const grams = when(`${message}=""`, dose(mass, value, base, assay, charge), message);
    return when(`OR(${mass}="",${value}="")`, '""', grams);
  };
  const head = unit.known
    ? undefined
    : spoken(
        corner,
        unit.word("unit as shown", (each) => each.shown),
      );
  return reading.table([
    [head, ...values],
    ...masses.map((mass, row) => [amounts[row], ...values.map((_, place) => cell(mass, place))]),
  ]);
};

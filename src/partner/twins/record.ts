/** Twins of the functions about the record: the usual scatter, the strength on a day. */
import {
  allowedShift,
  fewestStrengths,
  monthDays,
  roundingPart,
} from "../../core/record/strength-line";
import { changeDigits, strengthWords as words } from "../../core/record/strength-words";
import { controlFlags, control } from "./control";
import { usualStep } from "./shared/outlier-text";
import { cellsOf } from "./shared/list";
import { nothing, pairsOf } from "./shared/pairs";
import { recordText } from "./shared/record-text";
import { shown } from "./shared/shown-text";
import { and, figure, spoken, text, when } from "./shared/text";
import type { Work } from "./shared/work";

const usualScatter: Work = (reading) => {
  const record = recordText(reading);
  if (!record) return nothing;
  const { readings, squares, freedom } = record;
  const inferred = usualStep(reading, {
    rows: readings.length,
    columns: 1,
    cell: (row) => readings[row] ?? '""',
  });
  const isGiven = reading.call.argument("titreStep") !== undefined;
  const step = isGiven ? reading.figure("titreStep", inferred) : inferred;
  return reading.answer(`MAX(SQRT(${squares}/${freedom}),${step}/SQRT(6))`);
};

const usualFreedom: Work = (reading) => {
  const record = recordText(reading);
  return record ? reading.answer(record.freedom) : nothing;
};

/** A day is counted in whole ones, give or take a rounding error. */
const wholeDays = (days: string): string => `FIXED(INT(${days}+1E-9),0,TRUE)`;

const strengthOn: Work = (reading) => {
  const pairs = pairsOf(reading, ["dates", "strengths"], ["day", "strength, mol/L"]);
  const day = reading.figure("day");
  if (!pairs) return nothing;
  const { helper, helperColumn } = reading.call;
  const { first: days, second: strengths } = pairs;
  const eachOf = (
    label: string,
    column: typeof days,
    of: (cell: string, place: number) => string,
  ) =>
    helperColumn(
      label,
      cellsOf(column).map((cell, place) => when(`${cell}=""`, '""', of(cell, place))),
    );
  const start = helper("the first day", `MIN(${days.text})`);
  const count = helper("strengths: how many", `COUNT(${days.text})`);
  const since = eachOf("days since the first", days, (cell) => `${cell}-${start}`);
  const middle = helper("their mean", `AVERAGE(${since.text})`);
  const level = helper("mean strength, mol/L", `AVERAGE(${strengths.text})`);
  const across = eachOf("days from their mean", since, (cell) => `${cell}-${middle}`);
  const off = eachOf("strength less its mean, mol/L", strengths, (cell) => `${cell}-${level}`);
  const product = eachOf(
    "days from their mean, by strength less its mean",
    across,
    (cell, place) => `${cell}*${off.cell(place, 0)}`,
  );
  reading.needs(`${count}<${fewestStrengths}`);
  reading.allow(`MAX(${since.text})>0`);
  const spread = helper("sum of their squares", `SUMSQ(${across.text})`);
  const slope = helper("slope, mol/L a day", reading.guarded(`SUM(${product.text})/${spread}`));
  const far = helper("the day asked, from the mean day", `${day}-${start}-${middle}`);
  const strength = helper("strength on that day, mol/L", `${level}+${slope}*${far}`);
  const firstStrength = helper("the line on the first day, mol/L", `${level}-${slope}*${middle}`);
  reading.allow(`${strength}>0`, `${firstStrength}>0`);
  const fromLine = eachOf(
    "strength less the line, mol/L",
    off,
    (cell, place) => `${cell}-${slope}*${across.cell(place, 0)}`,
  );
  const least = `${figure(roundingPart)}*${level}`;
  const isOff = `OR(MAX(${fromLine.text})>${least},MIN(${fromLine.text})<-${least})`;
  const scatter = helper(
    "scatter about the line, mol/L",
    when(isOff, `SQRT(SUMSQ(${fromLine.text})/(${count}-2))`, "0"),
  );
  const t = helper("Student t", `TINV(0.05,${count}-2)`);
  const width = `${t}*${scatter}*SQRT(1/${count}+${far}^2/${spread})`;
  const change = helper("change in 30 days, %", `${slope}*${monthDays}*100/${strength}`);
  const rise = `ABS(${slope})`;
  const isChanging = helper(
    "does it change more than chance explains?",
    and(`${rise}*${monthDays}>${least}`, `${rise}>${t}*${scatter}/SQRT(${spread})`),
  );
  const within = helper(
    "days from the first within 1 % of it",
    when(isChanging, `${figure(allowedShift)}*${firstStrength}/${rise}`, "0"),
  );
  const asked = `(${day}-${start})`;
  const size = shown(reading, when(isChanging, `ABS(${change})`, "1"), changeDigits);
  const way = when(`${change}<0`, text(words.falls), text(words.rises));
  const goes = spoken(words.goes, way, size);
  const sentence = when(
    isChanging,
    when(
      `${asked}>${within}`,
      spoken(words.left, goes, wholeDays(within), wholeDays(asked)),
      spoken(words.stays, goes, wholeDays(within)),
    ),
    text(words.steady),
  );
  const none = undefined;
  return reading.table([
    [none, strength, none],
    [none, width, none],
    [none, change, none],
    [none, scatter, none],
    [none, sentence, none],
  ]);
};

export const record = {
  USUALSCATTER: usualScatter,
  USUALFREEDOM: usualFreedom,
  STRENGTHON: strengthOn,
  CONTROL: control,
  CONTROLFLAGS: controlFlags,
};

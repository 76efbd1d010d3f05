/** Twins of the control chart. */
import { action, warning } from "../../core/record/control-chart";
import { flags } from "../../core/record/control-flags";
import { controlWords as words, meanDigits } from "../../core/record/control-words";
import { controlText, isBeyond } from "./shared/control-text";
import { cellsOf } from "./shared/list";
import { nothing } from "./shared/pairs";
import { shown } from "./shared/shown-text";
import { spoken, text, when } from "./shared/text";
import type { Work } from "./shared/work";

/** Digits of a value in a sentence. */
const digits = 10;

export const control: Work = (reading) => {
  const weight = reading.figure("weight");
  const chart = controlText(reading);
  if (!chart) return nothing;
  const { helper, helperColumn } = reading.call;
  const { values, count, centre, movingRange, sigma, marks } = chart;
  const weighted = cellsOf(values).reduce(
    (before, value, place) =>
      helper(
        `weighted mean after value ${place + 1}`,
        `IF(${value}="",${before},${weight}*${value}+(1-${weight})*${before})`,
      ),
    centre,
  );
  const width = helper(
    "half-width of the weighted mean's limits",
    `${action}*${sigma}*SQRT(${weight}/(2-${weight}))`,
  );
  const flagged = helperColumn(
    "place of a value that is flagged",
    cellsOf(marks).map((mark, place) =>
      when(`OR(${mark}="",${mark}=${text(flags.none)})`, '""', String(place + 1)),
    ),
  );
  const last = helper("place of the last of them; 0 for none", `MAX(${flagged.text})`);
  const ofLast = (column: string, otherwise: string): string =>
    `IF(${last}=0,${otherwise},INDEX(${column},${last}))`;
  const value = helper("that value", ofLast(values.text, "1"));
  const sentence = when(
    `${last}>0`,
    spoken(
      words.flagged,
      shown(reading, value, digits),
      `FIXED(${last},0,TRUE)`,
      `FIXED(${count},0,TRUE)`,
      ofLast(marks.text, '""'),
    ),
    when(
      isBeyond(`${weighted}-${centre}`, width),
      spoken(words.drifting, shown(reading, weighted, meanDigits)),
      spoken(words.calm, `FIXED(${count},0,TRUE)`),
    ),
  );
  const none = undefined;
  return reading.table([
    [none, count],
    [none, centre],
    [none, movingRange],
    [none, sigma],
    [none, `${centre}-${action}*${sigma}`],
    [none, `${centre}-${warning}*${sigma}`],
    [none, `${centre}+${warning}*${sigma}`],
    [none, `${centre}+${action}*${sigma}`],
    [none, weighted],
    [none, `${centre}-${width}`],
    [none, `${centre}+${width}`],
    [none, sentence],
  ]);
};

export const controlFlags: Work = (reading) => {
  const { rows = 1, columns = 1 } = reading.call.argument("values") ?? {};
  const chart = controlText(reading);
  if (!chart) return nothing;
  const { read, marks } = chart;
  let before = "0";
  const orders = cellsOf(read).map((cell, place) => {
    const formula = `IF(${cell}="",${before},${before}+1)`;
    before = reading.call.helper(`values up to cell ${place + 1}`, formula);
    return before;
  });
  const mark = (place: number): string =>
    when(`${read.cell(place, 0)}=""`, '""', `INDEX(${marks.text},${orders[place] ?? "1"})`);
  return reading.table(
    Array.from({ length: rows }, (_, down) =>
      Array.from({ length: columns }, (__, across) => mark(down * columns + across)),
    ),
  );
};

/** The sentence of VERDICT, built from the core's own words. */
import { fewestLeft, mostPlaces, placesOfRecord } from "../../../core/replicates/verdict";
import { verdictWords as words } from "../../../core/replicates/verdict-words";
import type { JudgementText } from "./judgement-text";
import { cellsOf } from "./list";
import { moreText } from "./more-text";
import { counted, loneText } from "./lone-text";
import type { Reading } from "./reading";
import type { ReplicateColumns } from "./replicate-columns";
import { areEqual } from "./scatter";
import { decimalsOf, exactly, fixed } from "./shown-text";
import { and, never, significant, spoken, text, when } from "./text";

/** Digits of a figure that was worked out in the sheet. */
const digits = 10;

/** Decimals, and readings as their owner knows them. */
function shownReadings(reading: Reading, { read }: ReplicateColumns, step: string) {
  const { helper, helperColumn } = reading.call;
  const cells = cellsOf(read);
  const decimals = helperColumn(
    "decimals of the reading",
    cells.map((cell) => when(`${cell}=""`, '""', decimalsOf(cell, mostPlaces))),
  );
  const places = helper(
    "decimals shown",
    `MIN(${mostPlaces},MAX(${decimals.text},${decimalsOf(step, mostPlaces)}))`,
  );
  const named = (value: string, itsDecimals: string): string =>
    when(`${itsDecimals}>${mostPlaces}`, `${significant(value, digits)}&""`, fixed(value, places));
  const shown = helperColumn(
    "reading as shown",
    cells.map((cell, place) => when(`${cell}=""`, '""', named(cell, decimals.cell(place, 0)))),
  );
  const filled = helperColumn(
    "place of a reading",
    cells.map((cell, place) => when(`${cell}=""`, '""', String(place + 1))),
  );
  const at = (place: string): string =>
    cells.length === 1 ? shown.cell(0, 0) : `INDEX(${shown.text},${place})`;
  return { places, named, at, first: at(`MIN(${filled.text})`) };
}

export function verdictText(
  reading: Reading,
  columns: ReplicateColumns,
  found: JudgementText,
): string {
  const { helper } = reading.call;
  const { judged, count, mean, masses } = columns;
  const { test, suspect, others, allowed, agree, hasRecord } = found;
  const { places, named, at, first } = shownReadings(reading, columns, test.step);
  const finer = helper("decimals of a mean", `${places}+1`);
  const onMasses = (then: string, otherwise: string): string =>
    masses === "0" ? otherwise : when(`${masses}>0`, then, otherwise);
  const rangeOf = (column: string): string => fixed(`MAX(${column})-MIN(${column})`, places);
  const all = counted(count);
  const left = `COUNT(${others.text})`;

  const agreeing = onMasses(
    when(
      `ROUND(MAX(${judged.text})-MIN(${judged.text}),${places})=0`,
      spoken(words.agreeToTheDigit, all),
      spoken(words.agreeOnMasses, all, rangeOf(judged.text)),
    ),
    when(
      areEqual(judged.text),
      spoken(words.equal, when(`${count}=2`, text(words.both), spoken(words.all, all)), first),
      spoken(words.agree, all, rangeOf(judged.text), fixed(mean, finer)),
    ),
  );

  const alone = loneText(reading, columns, found);
  const perhaps = named(alone.perhaps, `(${decimalsOf(alone.perhaps, mostPlaces)})`);
  const slip = spoken(words.slip, at(alone.slip), alone.slipWord, perhaps);

  const distance = fixed(alone.distance, places);
  const isOptional = and(`${suspect}>0`, `${count}>${fewestLeft}`);
  const end = onMasses(text(words.end), when(isOptional, text(words.omit), text(words.end)));
  const lone = `${spoken(words.lone, at(alone.lone), distance, counted(`${count}-1`))}&${end}`;

  const together = spoken(words.apart, all, rangeOf(others.text));
  const without = spoken(words.othersApart, at(suspect), counted(left), rangeOf(others.text));
  const allowance = when(
    hasRecord,
    spoken(words.byRecord, fixed(allowed, placesOfRecord)),
    spoken(words.byDrops, exactly(reading, allowed)),
  );
  const apart = `${when(`${suspect}=0`, together, without)}&${allowance}`;

  const sayLone = helper(
    "a reading that stands alone, in words",
    when(`${alone.lone}=0`, '""', lone),
  );
  const saySlip = helper("a slip, in words", when(`${alone.slip}=0`, '""', slip));
  const sayApart = helper("apart, in words", apart);
  const more = moreText(reading, columns, found);
  const ofToday = more === never ? "" : `&${when(more, text(` ${words.more}`), '""')}`;
  const sayAgreeing = helper("agreement, in words", `${agreeing}${ofToday}`);
  const doubtful = when(`${alone.slip}>0`, saySlip, when(`${alone.lone}>0`, sayLone, sayApart));
  const several = when(and(`${suspect}=0`, agree), sayAgreeing, doubtful);
  return when(`${count}=1`, spoken(words.one, first), several);
}

/**
 * The bench card to print: one page with the steps in their order, a box and a caution for each, amounts
 * in large type, room for what was really weighed, and what to do when it goes wrong. On the page behind
 * it all cautions. Its figures are those of the batch's row, by reference.
 */
import { aboutCautions, batchCautions, brief } from "../../core/batch/cautions";
import { cardSteps, type CardStep, cardTroubles } from "../../core/card/steps";
import { type CardUnits, formsOf } from "../../core/card/units";
import type { BookCell, BookSheet } from "../../sheet/book";
import { wrappedLines } from "../../sheet/wrapped-lines";
import type { RecordedBatch } from "../planning/read-batches";
import { acidValueHeading, halfWidthHeading, worthColumn } from "../tables/batch-cells";
import { methanolTrial, trialAnswers, trialMix } from "../../core/batch/went";
import type { CardAmount } from "./amounts";
import { big, blank, box, heading, type Row, text } from "./cells";
import { figureCells, type Named, ofRow } from "./references";

const widths = [4, 52, 16, 22, 18];
const [, wordsWidth = 0, ...besideWords] = widths;
/** Letters from the words to the edge, in the usual type: nothing need be wrapped to be read on paper. */
const acrossThePage = 96;

const beside = besideWords.reduce((sum, width) => sum + width, 0);

/** So many lots find room on the page in the usual size; each further one takes a little of it. */
const lotsInUsualSize = 4;
const widerForEach = 0.04;

/** The page is as wide as its columns: wider ones make all of it smaller, and so as many rows fit. */
const widthsFor = (lots: number): readonly number[] => {
  const factor = 1 + widerForEach * Math.max(0, lots - lotsInUsualSize);
  return widths.map((width) => Math.ceil(width * factor));
};

/** The batch's number and day stand here. */
const named = (batch: RecordedBatch): Named => ({
  batch: "$C$2",
  day: batch.date === undefined ? undefined : "$D$2",
});

/** In large in the person's unit, with room beside it; in small the same in other units. */
function amountRows({ what, parts }: CardAmount, batch: RecordedBatch, units: CardUnits): Row[] {
  const ways = parts.flatMap((part) =>
    formsOf(units, part.counted).map((form) => ({ part, form })),
  );
  const cells = ways.map(({ part, form }, at) => figureCells(part, form, named(batch), at === 0));
  const [first = [], ...others] = cells;
  const also = others.flat();
  return [
    [
      null,
      big(what),
      // "imperial gal" is too wide for its column in the largest type
      ...first.map((cell): BookCell => ({ ...cell, style: cell.formula ? "large" : "title" })),
      text(`really ${blank(10)}`),
    ],
    ...(also.length === 0
      ? []
      : [[null, ...(also.length < widths.length - 1 ? [null] : []), ...also]]),
  ];
}

function stepRows(
  { words, when, caution, weighs }: CardStep,
  at: number,
  amounts: readonly CardAmount[],
  batch: RecordedBatch,
  units: CardUnits,
): Row[] {
  const [first = "", ...more] = wrappedLines(`${String(at + 1)}. ${words}`, wordsWidth);
  return [
    [box, text(first), ...(when === "" ? [] : [{ value: when, style: "title" } as const])],
    ...more.map((line): Row => [null, text(line)]),
    [null, text(`! ${caution}`)],
    ...amounts
      .filter((amount) => amount.weighs === weighs)
      .flatMap((amount) => amountRows(amount, batch, units)),
  ];
}

/** What the dose rests on, and what was said when it was used all the same. */
function acidRows(batch: RecordedBatch): Row[] {
  const by = named(batch);
  const isThere = (heading: string): boolean => batch.under(heading) !== "";
  const half = isThere(halfWidthHeading) ? [ofRow(halfWidthHeading, by, '"± "0.00')] : [];
  return [
    [null, text("Acid value of the oil, mg KOH/g"), ofRow(acidValueHeading, by, "0.00"), ...half],
    // a note may be long, and what runs over the edge is not printed
    ...[worthColumn, "Note"]
      .filter(isThere)
      .map((heading): Row => [null, { ...ofRow(heading, by), style: "words" }]),
  ];
}

const troubleRows = (): Row[] =>
  cardTroubles.flatMap(({ seen, act }) =>
    wrappedLines(act, beside).map((line, at) => [null, at === 0 ? text(seen) : null, text(line)]),
  );

/** As the pane asks it. */
const wentRows = (): Row[] => [
  [
    null,
    text(`Fuel made ${blank(12)}  Washes ${blank(6)}`),
    text(`Dark layer after ${blank(8)} minutes`),
  ],
  [
    null,
    text(`${methanolTrial}: ${trialMix}`),
    text(trialAnswers.map((word) => `☐ ${word}`).join("   ")),
  ],
  [null, text("What was seen"), text(blank(40))],
  [null, text(`Weighed by ${blank(24)}`), text(`Checked by ${blank(24)}`)],
];

/** A page of their own, to hang where the work is done: a line free between two. */
const cautionRows = (): Row[] => [
  [{ value: "Safety", style: "title" }, null, text(aboutCautions)],
  ...batchCautions.flatMap((caution, at): Row[] => [
    ...(at === 0 ? [] : [[]]),
    ...wrappedLines(caution, acrossThePage).map((words, index): Row => [
      index === 0 ? text("!") : null,
      text(words),
    ]),
  ]),
];

export function cardSheet(
  batch: RecordedBatch,
  amounts: readonly CardAmount[],
  units: CardUnits,
  name: string,
): BookSheet {
  const card: Row[] = [
    [{ value: "Bench card", style: "title" }],
    [
      null,
      text("Batch"),
      { value: batch.batch, align: "left" },
      ...(batch.date === undefined
        ? []
        : [{ value: batch.date, format: "yyyy-mm-dd", align: "left" } as const]),
    ],
    [null, text(brief("permission"))],
    ...acidRows(batch),
    ...cardSteps.flatMap((step, at) => stepRows(step, at, amounts, batch, units)),
    heading("When it goes wrong", "", "", ""),
    ...troubleRows(),
    heading("How it went", "", "", ""),
    ...wentRows(),
  ];
  const rows = [...card, ...cautionRows()];
  return {
    name,
    rows,
    columnWidths: widthsFor(batch.oils.length),
    tables: [],
    frozenRows: 0,
    print: {
      area: { row: 0, column: 0, rows: rows.length, columns: widths.length },
      landscape: false,
      fitToWidth: true,
      secondPage: card.length,
    },
  };
}

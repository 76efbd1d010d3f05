/**
 * A sheet to print and take to the scale: amounts in large type with boxes to tick, what they were
 * worked out from, and lines to sign; on a second page the cautions. Every amount is a live formula.
 */
import { aboutCautions, batchCautions } from "../../core/batch/cautions";
import { amountUnits } from "../../core/quantity/units";
import type { BookCell, BookSheet } from "../../sheet/book";
import { wrappedLines } from "../../sheet/wrapped-lines";
import { given, heading, type Row, text } from "./cells";
import { lotRows, worthChanged } from "./lot-rows";
import { at, type Places, placesOf } from "./places";
import { weighRows } from "./weigh-rows";
import type { WeighOutRecord } from "./weigh-out-record";

/** Letters across the page in the usual type: no cell need be wrapped to be read on paper. */
const acrossThePage = 92;

/** Two ways to the same figure differ by less than this part of it. */
const sameTo = "0.000001";

const linesOf = (words: string): string[] => wrappedLines(words, acrossThePage);

/** What was so when the sheet was made: these words do not follow the figures. */
const wordsBelow = ({ between, worth, route }: WeighOutRecord): string[] =>
  [
    between === ""
      ? "The uncertainty of the lye is not known: the titration has no ±."
      : `The lye, 95 % interval: ${between}, from the uncertainty of the titration when this sheet was made.`,
    `When this sheet was made: acid value ${worth}`,
    `When this sheet was made: ${route}`,
  ].flatMap(linesOf);

/** A titration made after the sheet moves its amounts, and not the words that were read before it was made. */
const stillSo = (record: WeighOutRecord, places: Places): BookCell => {
  const { acidValue } = record;
  const { mix } = places;
  const then = acidValue.toString();
  const anew = "make this sheet anew before anything is weighed.";
  const changed = worthChanged(record, places);
  const other =
    changed === "" ? '""' : `IF(${changed},"What the titration is worth has changed: ${anew}","")`;
  const words = `The acid value is no longer ${acidValue.toFixed(2)}: ${anew}`;
  return {
    formula: `=IF(ISNUMBER(${at(mix)}),IF(ABS(${at(mix)}-${then})>${sameTo}*${then},"${words}",${other}),"")`,
    style: "caution",
  };
};

function fromRows({ batch, oil }: WeighOutRecord): Row[] {
  const unit = amountUnits.find(({ name }) => name === batch.unit)?.shown ?? batch.unit;
  const row = (what: string, cell: BookCell | null, unitWords = ""): Row => [
    null,
    text(what),
    cell,
    ...(unitWords === "" ? [] : [text(unitWords)]),
  ];
  const optional = batch.temperature;
  return [
    row("Amount of oil", given(batch.amount.toNumber()), unit),
    row(
      "Oil temperature",
      optional ? given(optional.toNumber(), "0.0") : given(""),
      "°C; empty: 20",
    ),
    row("Kind of oil", given(oil)),
    row("Base", given(batch.base)),
    row("Assay", given(batch.assay.toNumber(), "0.0##"), "%"),
    row("Base charge, pure", given(batch.charge.toNumber(), "0.000##"), "% of the oil"),
    row("Methanol to one of triglyceride", given(batch.ratio.toNumber(), "0.00##"), "mol"),
    row("Allowed acid", given(batch.limitFfa.toNumber(), "0.0##"), "% FFA as oleic"),
  ];
}

const line = (what: string): Row => [
  null,
  text(`${what} ${"_".repeat(24)}`),
  null,
  text(`Date ${"_".repeat(20)}`),
];

/** A page of their own, to hang where the work is done: a line free between two. */
const cautionRows = (): Row[] => [
  [{ value: "Safety", style: "title" }, null, text(aboutCautions)],
  ...batchCautions.flatMap((caution, at): Row[] => [
    ...(at === 0 ? [] : [[]]),
    ...linesOf(caution).map((words, index): Row => [index === 0 ? text("!") : null, text(words)]),
  ]),
];

const sheetWidth = 5;

export function weighOutSheet(record: WeighOutRecord, name: string): BookSheet {
  const { batch, lots } = record;
  const words = wordsBelow(record);
  const places = placesOf(lots.length, words.length, record.target !== undefined);
  const toWeigh: Row[] = [
    [{ value: "Weigh-out sheet", style: "title" }],
    [
      null,
      text(`Batch ${batch.batch}`.trim()),
      { value: batch.date, format: "yyyy-mm-dd", align: "left" },
    ],
    [null, text("A result is not a permission. Tick each amount once it stands on the scale.")],
    [null, stillSo(record, places)],
    heading("To weigh", "Amount", "Unit", ""),
    ...weighRows(record, places),
    ...words.map((each): Row => [null, text(each)]),
    [],
    ...lotRows(record, places),
    [],
    ...fromRows(record),
    [],
    line("Weighed by"),
    line("Checked by"),
  ];
  const rows = [...toWeigh, ...cautionRows()];
  return {
    name,
    rows,
    columnWidths: [5, 36, 16, 16, 22],
    tables: [],
    frozenRows: 0,
    print: {
      area: { row: 0, column: 0, rows: rows.length, columns: sheetWidth },
      landscape: false,
      fitToWidth: true,
      secondPage: toWeigh.length,
    },
  };
}

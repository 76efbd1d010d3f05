/** The plan of a bench card to print: a sheet of its own, written as one undo step and read back. */
import type { CardUnits } from "../../core/card/units";
import { cellAt } from "../../sheet/address";
import type { BookSheet, BookValue } from "../../sheet/book";
import { type Block, fault, type Host, isFault, type Step } from "../../sheet/port";
import { refused } from "../../sheet/refusal";
import { cardAmounts } from "../card/amounts";
import { cardSheet } from "../card/sheet";
import { batchesName } from "../tables/batch-cells";
import { carryOut } from "./carry-out";
import { finished } from "./finished";
import { readLogbook } from "./logbook/read-logbook";
import type { Confirmed, Plan, PlannedCell, RecordOutcome, Refusal } from "./plan";
import { plannedCell } from "./planned-cell";
import { freeSheetName } from "./plan-table";
import { readBatches, type RecordedBatch } from "./read-batches";
import { refusal } from "./refusal";
import type { Pause } from "./settle";
import { contentOf, plainSheetSteps, wholeBlock } from "./sheet-steps";

export interface CardAsked {
  /** The sheet's row of the batch, from 1, and the batch's name there. */
  readonly row: number;
  readonly batch: BookValue;
  readonly units: CardUnits;
}

const longestSheetName = 28;

/**
 * A sheet's name holds no brackets, colons, stars, question marks or slashes, nor quotes at its ends, and
 * here nothing that is not seen: marks that turn the direction of reading, control characters.
 */
function nameFor(batch: BookValue): string {
  const fit = `Card ${String(batch)}`
    .replace(/[[\]:*?/\\]|\p{Control}|\p{Format}/gu, " ")
    .replace(/\s+/g, " ")
    .slice(0, longestSheetName)
    // half of a character that was cut in two
    .replace(/\p{Surrogate}/gu, "");
  return fit.replace(/^'+|'+$/g, "").trim();
}

const flat = (value: BookValue): string => String(value).trim().toLowerCase();

/** The card finds its figures by number and day, and by lot: they must lead to one row. */
function ambiguous(batch: RecordedBatch, rows: readonly RecordedBatch[]): Refusal | undefined {
  const name = flat(batch.batch);
  if (name === "") return refused("Give the batch a number in Batches first: the card goes by it.");
  const alike = rows.filter(
    ({ batch: other, date }) => flat(other) === name && date === batch.date,
  );
  if (alike.length > 1)
    return refused(
      `Rows ${alike.map(({ row }) => String(row)).join(" and ")} of Batches have one number and one day: give one of them another number.`,
    );
  const lots = batch.oils.map(({ lot }) => flat(lot));
  const twice = batch.oils.find(({ lot }, at) => lots.indexOf(flat(lot)) < at);
  return twice === undefined
    ? undefined
    : refused(`Lot ${String(twice.lot)} stands twice in Blends for this batch: make it one row.`);
}

function plannedCells(sheet: BookSheet): PlannedCell[] {
  return sheet.rows.flatMap((row, at) =>
    row.flatMap((cell, column) => {
      if (!cell || (cell.value === undefined && cell.formula === undefined)) return [];
      const block = cellAt(sheet.name, at, column);
      const what = row[1]?.value ?? sheet.rows[at - 1]?.[1]?.value ?? "";
      const heading = cell.formula === undefined ? "Words" : String(what);
      return [plannedCell({ block, heading, content: contentOf(cell), format: cell.format })];
    }),
  );
}

const stepsOf = (sheet: BookSheet, block: Block): Step[] => [
  ...plainSheetSteps(sheet),
  {
    do: "print-area",
    block,
    landscape: false,
    ...(sheet.print?.secondPage === undefined ? {} : { secondPage: sheet.print.secondPage }),
  },
  { do: "select", block: cellAt(sheet.name, 0, 0) },
];

/** What making the sheet would do. Reads, never writes. */
export async function planCard(host: Host, asked: CardAsked): Promise<Plan | Refusal> {
  const snapshot = await readLogbook(host, batchesName);
  if (isFault(snapshot)) return refusal(snapshot);
  if (snapshot.sheets.isProtected) return refusal(fault("workbook-protected"));
  const found = await readBatches(host);
  if (isFault(found)) return refusal(found);
  const batch = found?.rows.find(({ row }) => row === asked.row);
  if (found === undefined || batch?.batch !== asked.batch)
    return refused("The rows of Batches have moved: look again.");
  const hindrance = ambiguous(batch, found.rows);
  if (hindrance) return hindrance;
  const amounts = cardAmounts(batch);
  if (amounts === undefined) return refused("The row shows no dose: there is no card.");
  const name = freeSheetName(snapshot, nameFor(asked.batch));
  const sheet = cardSheet(batch, amounts, asked.units, name);
  const block = wholeBlock(sheet);
  return finished({
    what: "make the card",
    where: `the sheet ${name}`,
    summary: `A new sheet ${name}: the card on one page, all cautions on the page behind.`,
    cells: plannedCells(sheet).filter(({ heading }) => heading !== "Words"),
    makes: [
      `A new sheet ${name}, ${String(block.rows)} rows: steps to tick, amounts from the row in large type.`,
      "Its print area: two pages, upright.",
    ],
    remarks: [],
    block,
    table: "",
    steps: stepsOf(sheet, block),
  });
}

/** Plans anew and writes only what was agreed to. */
export const makeCard = (
  host: Host,
  asked: CardAsked,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> =>
  carryOut(
    host,
    `Make the bench card ${String(asked.batch)}`.trim(),
    () => planCard(host, asked),
    confirmed,
    pause,
  );

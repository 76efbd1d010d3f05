/** The plan of a sheet to print: a sheet of its own, written as one undo step and read back. */
import { type Block, fault, type Host, isFault, type Step } from "../../sheet/port";
import type { BookSheet } from "../../sheet/book";
import { titrations } from "../tables/titrations";
import { weighOutSheet } from "../weigh-out/sheet";
import type { WeighOutRecord } from "../weigh-out/weigh-out-record";
import { cellAt } from "../../sheet/address";
import { carryOut } from "./carry-out";
import { finished } from "./finished";
import type { Confirmed, Plan, PlannedCell, RecordOutcome, Refusal } from "./plan";
import { plannedCell } from "./planned-cell";
import { freeSheetName } from "./plan-table";
import { readLogbook } from "./logbook/read-logbook";
import { refusal } from "./refusal";
import type { Pause } from "./settle";
import { contentOf, plainSheetSteps, wholeBlock } from "./sheet-steps";

const longestSheetName = 28;

/**
 * A sheet's name holds no brackets, colons, stars, question marks or slashes, nor quotes at its ends, and
 * here nothing that is not seen: marks that turn the direction of reading, control characters.
 */
function nameFor({ batch }: WeighOutRecord): string {
  const fit = `Weigh-out ${batch.batch}`
    .replace(/[[\]:*?/\\]|\p{Control}|\p{Format}/gu, " ")
    .replace(/\s+/g, " ")
    .slice(0, longestSheetName)
    // half of a character that was cut in two
    .replace(/\p{Surrogate}/gu, "");
  return fit.replace(/^'+|'+$/g, "").trim();
}

function plannedCells(sheet: BookSheet): PlannedCell[] {
  return sheet.rows.flatMap((row, at) =>
    row.flatMap((cell, column) => {
      if (!cell || (cell.value === undefined && cell.formula === undefined)) return [];
      const block = cellAt(sheet.name, at, column);
      const content = contentOf(cell);
      const before = row[1]?.value;
      const heading = column > 1 && typeof before === "string" ? before : "Words";
      return [plannedCell({ block, heading, content, format: cell.format })];
    }),
  );
}

function stepsOf(sheet: BookSheet, block: Block): Step[] {
  return [
    ...plainSheetSteps(sheet),
    {
      do: "print-area",
      block,
      landscape: false,
      ...(sheet.print?.secondPage === undefined ? {} : { secondPage: sheet.print.secondPage }),
    },
    { do: "select", block: cellAt(sheet.name, 0, 0) },
  ];
}

/** What making the sheet would do. Reads, never writes. */
export async function planWeighOut(host: Host, record: WeighOutRecord): Promise<Plan | Refusal> {
  const snapshot = await readLogbook(host, titrations.name);
  if (isFault(snapshot)) return refusal(snapshot);
  if (snapshot.sheets.isProtected) return refusal(fault("workbook-protected"));
  const name = freeSheetName(snapshot, nameFor(record));
  const sheet = weighOutSheet(record, name);
  const block = wholeBlock(sheet);
  const cells = plannedCells(sheet);
  return finished({
    what: "make the sheet",
    where: `the sheet ${name}`,
    summary: `A new sheet ${name}: two pages to print, its amounts live formulas.`,
    cells: cells.filter(({ heading }) => heading !== "Words"),
    makes: [
      `A new sheet ${name}, ${String(block.rows)} rows, with amounts in large type and boxes to tick.`,
      "Lines for names and dates; on the second page all cautions, to hang where the work is done.",
      "Its print area: two pages, upright.",
    ],
    remarks: [],
    block,
    table: "",
    steps: stepsOf(sheet, block),
  });
}

/** Plans anew and writes only what was agreed to. */
export const makeWeighOut = (
  host: Host,
  record: WeighOutRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> =>
  carryOut(
    host,
    `Make the weigh-out sheet ${record.batch.batch}`.trim(),
    () => planWeighOut(host, record),
    confirmed,
    pause,
  );

/** The lots of a batch as rows of `Blends`: into the table that is there, or into one made beside `Batches`. */
import { type Block, fault, type Fault, type Host, isFault, type Step } from "../../../sheet/port";
import type { BookTable } from "../../../sheet/book";
import { refused } from "../../../sheet/refusal";
import { areaName } from "../../../sheet/cell-name";
import type { BatchRecord } from "../../record/batch-record";
import { blends, type BlendRow } from "../../tables/blends";
import { rowValues } from "../../tables/row-values";
import { tableSheet } from "../../tables/sheet";
import { readLogbook } from "../logbook/read-logbook";
import { placeOf } from "../headings";
import type { Plan, PlannedCell, Refusal, Remark } from "../plan";
import { freeSheetName } from "../plan-table";
import { valueText } from "../preview-text";
import { refusal } from "../refusal";
import { remarkWords } from "../remark-wording";
import { sheetSteps, tableBlock } from "../sheet-steps";
import { type Logbook, readCell, type Snapshot } from "../snapshot";
import { rowCells } from "./row-cells";
import { freeRows } from "./target-row";

/** What goes into `Blends` along with a row of `Batches`. */
export interface BlendsPart {
  readonly cells: readonly PlannedCell[];
  readonly makes: readonly string[];
  readonly remarks: readonly Remark[];
  /** Before the row of `Batches` is written, and after it. */
  readonly before: readonly Step[];
  readonly after: readonly Step[];
}

/** Rows of a batch of several lots; a batch of one has none. */
const blendRowsOf = ({ batch, lots }: BatchRecord): readonly BlendRow[] =>
  lots.length < 2 ? [] : lots.map((lot) => ({ ...lot, batch }));

/** A name with these would count other batches' lots along: spreadsheets read them as signs. */
const signs = /[*?~]|^\s*[<>=]/;

const flat = (text: string): string => text.trim().toLowerCase();

function holdsBatch(logbook: Logbook, batch: string): boolean {
  const column = placeOf("Batch", logbook.table.headings);
  return (
    column !== undefined &&
    Array.from({ length: logbook.table.block.rows - 1 }, (_, at) =>
      flat(valueText(readCell(logbook, at + 1, column).value)),
    ).includes(flat(batch))
  );
}

function stopped({ logbook, sheets }: Snapshot, { batch }: BatchRecord): Refusal | undefined {
  if (signs.test(batch)) return refused(remarkWords.nameWithSigns(batch));
  if (!logbook) return undefined;
  const { name, block, isFiltered, hasTotals } = logbook.table;
  if (holdsBatch(logbook, batch)) return refused(remarkWords.inBlends(batch));
  if (sheets.sheets.find((sheet) => sheet.name === block.sheet)?.isProtected) {
    return refusal(fault("sheet-protected", block.sheet));
  }
  if (hasTotals) return refused(remarkWords.totals(name));
  return isFiltered ? refusal(fault("table-filtered", name)) : undefined;
}

/** @returns undefined for a batch of one lot */
export async function intoBlends(
  host: Host,
  record: BatchRecord,
): Promise<BlendsPart | undefined | Refusal | Fault> {
  const rows = blendRowsOf(record);
  if (rows.length === 0) return undefined;
  const snapshot = await readLogbook(host, blends.name);
  if (isFault(snapshot)) return snapshot;
  const refusedFor = stopped(snapshot, record);
  if (refusedFor) return refusedFor;
  const { logbook } = snapshot;
  if (!logbook) return refusal(fault("failed", blends.name));
  const targets = freeRows(logbook, blends, rows.length);
  if (targets.length < rows.length) return refused(remarkWords.noFreeRow(blends.name));
  const { block } = logbook.table;
  const written = rows.map((row, at) => {
    const target = targets[at] as (typeof targets)[number];
    return { target, ...rowCells(logbook, blends, target, rowValues(blends, row)) };
  });
  const end = Math.max(block.rows, ...targets.map(({ row }) => row + 1));
  return {
    cells: written.flatMap(({ cells }) => cells),
    makes: [],
    remarks: written[0]?.remarks ?? [],
    before: [
      ...(end > block.rows
        ? ([{ do: "grow-table", name: blends.name, block: { ...block, rows: end } }] as const)
        : []),
      ...written.map(({ target, contents }): Step => ({
        do: "set-cells",
        block: { ...block, row: block.row + target.row, rows: 1 },
        contents: [contents],
      })),
    ],
    after: [],
  };
}

/** A table of its own, where the workbook has neither: its rows come last, since they read `Batches`. */
export function newBlends(snapshot: Snapshot, record: BatchRecord): BlendsPart {
  const rows = blendRowsOf(record);
  const entries = rows.map((row) =>
    Object.fromEntries(rowValues(blends, row).map(({ heading, value }) => [heading, value])),
  );
  const name = freeSheetName(snapshot, blends.name);
  const sheet = { ...tableSheet(blends, entries.length === 0 ? [{}] : entries), name };
  const [table] = sheet.tables as [BookTable];
  const block: Block = tableBlock(sheet, table);
  const steps = sheetSteps(sheet, table);
  const isBody = (step: Step): boolean => step.do === "set-cells" && step.block.row > block.row;
  return {
    cells: [],
    makes: [
      `A new sheet ${name} with the table ${blends.name}: ${rows.length === 0 ? "an empty row" : `${String(rows.length)} lots`} in ${areaName({ ...block, row: block.row + 1, rows: block.rows - 1 })}, for batches of several lots.`,
    ],
    remarks: [],
    before: steps.filter((step) => !isBody(step)),
    after: steps.filter(isBody),
  };
}

/** Both in one plan: one write, one undo. */
export const together = (
  plan: Plan,
  part: BlendsPart,
): Omit<Plan, "kind" | "mustConfirm" | "fingerprint"> => ({
  ...plan,
  cells: [...plan.cells, ...part.cells],
  makes: [...plan.makes, ...part.makes],
  remarks: [...plan.remarks, ...part.remarks],
  steps: [...part.before, ...plan.steps, ...part.after],
});

/** Bench cards of batches in the sample logbook, with what their formulas come to. */
import type { CardUnits } from "../../../src/core/card/units";
import type { Book, BookCell, BookSheet, BookValue } from "../../../src/sheet/book";
import { isFault } from "../../../src/sheet/port";
import { makeCard, planCard } from "../../../src/workbook/planning/plan-card";
import { readBatches } from "../../../src/workbook/planning/read-batches";
import { planBatch, recordBatch } from "../../../src/workbook/planning/record/record-batch";
import type { BatchRecord } from "../../../src/workbook/record/batch-record";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";

/** The sample with another batch in it, and the sheet's row of a batch. */
export async function hostWith(batch: BatchRecord) {
  const host = openMemory(sampleLogbook());
  const plan = await planBatch(host, batch);
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  const { fingerprint, mustConfirm } = plan;
  const outcome = await recordBatch(host, batch, { fingerprint, agreed: mustConfirm });
  if (outcome.kind !== "recorded") throw new Error(outcome.kind);
  const rowOf = async (name: string): Promise<number> => {
    const found = await readBatches(host);
    if (found === undefined || isFault(found)) throw new Error("no batches");
    return found.rows.find((each) => each.batch === name)?.row ?? 0;
  };
  return { host, rowOf };
}

/** The card's sheet as the host then shows it. */
export async function cardOf(batch: BatchRecord, units: CardUnits): Promise<BookSheet> {
  const { host, rowOf } = await hostWith(batch);
  const asked = { row: await rowOf(batch.batch), batch: batch.batch, units };
  const plan = await planCard(host, asked);
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  const { fingerprint, mustConfirm, block } = plan;
  const outcome = await makeCard(host, asked, { fingerprint, agreed: mustConfirm });
  if (outcome.kind !== "recorded") throw new Error(outcome.kind);
  const found = await host.read([{ ask: "cells", block }]);
  const cells = isFault(found) ? undefined : found[0];
  if (cells?.kind !== "cells") throw new Error("no cells");
  const [step] = plan.steps.filter((each) => each.do === "set-cells");
  const print = plan.steps.find((each) => each.do === "print-area");
  if (step?.do !== "set-cells" || print?.do !== "print-area") throw new Error("no steps");
  const cell = (row: number, column: number): BookCell | null => {
    const content = step.contents[row]?.[column];
    if (!content || content.kind === "keep") return null;
    const { style, format } = content;
    const value = cells.values[row]?.[column];
    if (typeof value === "object") throw new Error(`${value.error} in row ${String(row + 1)}`);
    return {
      value: (value ?? "") as BookValue,
      ...(style === undefined ? {} : { style }),
      ...(format === undefined ? {} : { format }),
    };
  };
  const widths = plan.steps.flatMap((each) => (each.do === "set-width" ? [each.characters] : []));
  return {
    name: block.sheet,
    rows: step.contents.map((row, at) => row.map((_, column) => cell(at, column))),
    columnWidths: widths,
    tables: [],
    frozenRows: 0,
    print: {
      area: block,
      landscape: false,
      fitToWidth: true,
      ...(print.secondPage === undefined ? {} : { secondPage: print.secondPage }),
    },
  };
}

/** As a book of its own. */
export const bookOf = (...sheets: readonly BookSheet[]): Book => ({ name: "card", sheets });

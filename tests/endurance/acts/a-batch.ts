/** A batch in the pane, its row and its card to print, from the lots that stand in the workbook. */
import assert from "node:assert/strict";
import { atOdds, recordOf } from "../../../src/taskpane/batch/record";
import { type Action, reduce } from "../../../src/taskpane/batch/reducer";
import { draftFrom } from "../../../src/taskpane/batch/stored";
import { viewOf } from "../../../src/taskpane/batch/view-of";
import { isFault } from "../../../src/sheet/port";
import { makeCard, planCard } from "../../../src/workbook/planning/plan-card";
import { readBatches } from "../../../src/workbook/planning/read-batches";
import { readLots } from "../../../src/workbook/planning/read-lots";
import { planBatch, recordBatch } from "../../../src/workbook/planning/record/record-batch";
import { today } from "../bench-world";
import { catalystByHand, ffaByHand, isNear, kilogramsByHand } from "../by-hand";
import type { World } from "../world";
import { carry } from "./carried";

const task = "batch";

const act = (world: World, ...actions: readonly Action[]): void => {
  world.batch = actions.reduce(reduce, world.batch);
};

/** The pane keeps what was typed; closed and opened again it is there. */
export async function closeAndOpen(world: World): Promise<void> {
  await world.memory.keep(task, world.batch);
  const found = draftFrom(await world.memory.read(task));
  assert.deepEqual(found, world.batch);
  world.batch = found;
}

export async function recordABatch(world: World): Promise<void> {
  const { chance, workbook } = world;
  const lots = await readLots(workbook.host);
  if (lots === undefined || isFault(lots) || lots.length === 0) return;
  const lot = chance.of(lots);
  for (const { lot: mark } of world.batch.lots)
    act(world, { do: "choose-lot", lot: mark, isChosen: false });
  const [amount, unit] = [chance.figure(20, 300), chance.of(["l", "kg"] as const)];
  const base = chance.of(["KOH", "NaOH"] as const);
  const [assay, charge] = [chance.of(["90", "85.5"]), chance.of(["0.765", "0.9", "1"])];
  act(
    world,
    { do: "choose-lot", lot: String(lot.lot), isChosen: true },
    { do: "pick", picked: { unit, base } },
    { do: "pick", picked: { chargeIs: "pure" } },
    { do: "type", field: "amount", text: amount },
    { do: "type", field: "assay", text: assay },
    { do: "type", field: "chargePercent", text: charge },
    { do: "type", field: "limit", text: "5" },
    { do: "write", words: { batch: `B-${String(chance.whole(1, 99))}` } },
  );
  await closeAndOpen(world);
  const view = viewOf(world.batch, ".", lots);
  const { acidValue } = lot;
  const isSour = acidValue !== undefined && ffaByHand(acidValue) > 5 + 1e-6;
  const record = recordOf(view, today);
  if (acidValue === undefined || isSour) assert.equal(record, undefined);
  if (!record || acidValue === undefined) return;
  if (chance.is(0.25)) return printTheCard(world);
  const { outcome, isClear } = await carry(world, {
    what: "batch",
    plan: () => planBatch(workbook.host, record),
    write: (confirmed) => recordBatch(workbook.host, record, confirmed),
  });
  if (outcome.kind !== "recorded") return;
  act(world, { do: "recorded" });
  if (workbook.isSpoilt || lot.oil !== "used cooking oil") return;
  const kilograms = kilogramsByHand(Number(amount.replace(",", ".")), unit);
  const wanted = catalystByHand(kilograms, acidValue, base, Number(assay), Number(charge));
  const shown = view.working.batch;
  assert.equal(
    shown !== undefined && "catalyst" in shown && isNear(shown.catalyst.toNumber(), wanted),
    true,
  );
  const found = outcome.results["Catalyst g"];
  if (!outcome.isReadBack || isNear(found, wanted)) return;
  // somebody changed a titration while this was written: then the pane says so
  if (isClear || atOdds(outcome, view).length === 0) {
    throw new Error(`Catalyst g shows ${JSON.stringify(found)}, by hand ${String(wanted)}`);
  }
}

async function printTheCard(world: World): Promise<void> {
  const { chance, workbook } = world;
  const { host } = workbook;
  const batches = await readBatches(host);
  if (batches === undefined || isFault(batches) || batches.rows.length === 0) return;
  const { row, batch } = chance.of(batches.rows);
  const asked = { row, batch, units: chance.of(["metric", "us"] as const) };
  await carry(world, {
    what: "bench card",
    plan: () => planCard(host, asked),
    write: (confirmed) => makeCard(host, asked, confirmed),
  });
}

/** The batch as a row of the logbook. */
import { type Exact, exact, hundred } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import type { BatchLot, BatchRecord } from "../../workbook/record/batch-record";
import type { RecordOutcome } from "../../workbook/planning/plan";
import { sheetDay } from "../widgets/day";
import { digits } from "../widgets/shown-number";
import { allTheSame, isHeldBack } from "./acid-worth";
import { isTakenAsPure, type MixedLot } from "./mix";
import type { View } from "./view-of";
import type { Seen } from "./seen";
import { isVolume } from "./working";

/** As a cell will hold it. */
const held = (value: Exact): Exact => exact(value.toNumber());

/** Oils of two kinds fill different volumes of a kilogram: those are weighed. */
const isOneKind = (lots: readonly MixedLot[]): boolean =>
  lots.every(({ recorded }) => recorded.oil === lots[0]?.recorded.oil);

/** Each lot's part of the batch: of the amount as it was typed, or in kilograms. */
function lotsOf(lots: readonly MixedLot[], amount: Exact, unit: string, mass: Exact): BatchLot[] {
  const [whole, counted] = isOneKind(lots) ? [amount, unit] : [mass, "kg"];
  return lots.map(({ recorded, percent }) => ({
    lot: recorded.lot,
    percent: held(percent),
    amount: held(whole.times(percent).div(hundred)),
    unit: counted,
  }));
}

/** All that a row is made of; undefined while there is no weigh-out. */
export function batchOf(seen: Seen, today: string): BatchRecord | undefined {
  const { draft, figures, working } = seen;
  if (isHeldBack(seen)) return undefined;
  const { mix, batch, charge, ratio, oilMass } = working;
  const amount = figures.value("amount");
  const assay = figures.value("assay");
  const limitFfa = figures.value("limit");
  if (!batch || isProblem(batch) || !mix || isProblem(mix)) return undefined;
  if (!charge || isProblem(charge) || !ratio || isProblem(ratio)) return undefined;
  if (!oilMass || isProblem(oilMass) || !amount || !assay || !limitFfa) return undefined;
  return {
    date: sheetDay(today),
    batch: draft.words.batch.trim(),
    lots: lotsOf(mix.lots, amount, draft.picked.unit, oilMass),
    amount,
    unit: draft.picked.unit,
    temperature: isVolume(draft) ? figures.value("temperature") : undefined,
    base: draft.picked.base,
    lyeLot: draft.words.lyeLot.trim(),
    assay,
    charge,
    ratio,
    limitFfa,
    water: figures.value("water"),
    isTitrantAsIfPure: isTakenAsPure(
      draft,
      mix.lots.map(({ recorded }) => recorded),
    ),
    note: [draft.words.note.trim(), allTheSame(seen)].filter((words) => words !== "").join(" "),
  };
}

/** @returns undefined while something the row needs is missing */
export const recordOf = (view: View, today: string): BatchRecord | undefined =>
  view.wants.length > 0 ? undefined : batchOf(view, today);

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-12 * Math.abs(b);

/** Does the row's own formula give the lye that the pane shows? A sentence when it does not. */
export function atOdds(outcome: RecordOutcome, { working }: Seen): readonly string[] {
  const { batch } = working;
  const found = outcome.kind === "recorded" ? outcome.results["Catalyst g"] : undefined;
  if (found === undefined || !batch || isProblem(batch)) return [];
  const shown = batch.catalyst.toNumber();
  if (typeof found === "number" && isSame(found, shown)) return [];
  const cell =
    typeof found === "number"
      ? `${digits(found, 6)} g`
      : typeof found === "object"
        ? found.error
        : "no figure";
  return [
    `The row shows ${cell} of lye and the pane ${digits(shown, 6)} g: look for a changed formula or cell in it.`,
  ];
}

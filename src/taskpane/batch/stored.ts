/** A batch out of storage, believed part by part: what is not of the right kind is left out. */
import { isObject, listOf, textOf } from "../drafts/believed";
import { storedEntered } from "../stepped/entered";
import { batch } from "./batch";
import { type ChosenLot, type Draft, mostLots, newDraft } from "./draft";

const lotsFrom = (value: unknown): ChosenLot[] =>
  listOf(value)
    .filter(isObject)
    .map(({ lot, share }) => ({ lot: textOf(lot), share: textOf(share) }))
    .filter(({ lot }, at, all) => lot !== "" && all.findIndex((e) => e.lot === lot) === at)
    .slice(0, mostLots);

export function draftFrom(value: unknown): Draft {
  if (!isObject(value) || value.version !== 1) return newDraft();
  return {
    version: 1,
    ...storedEntered(batch, value),
    lots: lotsFrom(value.lots),
    usedAllTheSame: textOf(value.usedAllTheSame),
    isRecorded: value.isRecorded === true,
  };
}

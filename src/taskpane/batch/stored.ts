/** A batch out of storage, believed part by part: what is not of the right kind is left out. */
import { baseNames } from "../../core/reference/bases";
import {
  isObject,
  listOf,
  objectOf,
  pickedFrom,
  type PickWords,
  textOf,
  typedFrom,
} from "../drafts/believed";
import { unitIds } from "../fields/units";
import { type ChosenLot, type Draft, mostLots, newDraft, type Picked, stepIds } from "./draft";
import { numberFieldIds } from "./fields";

const picks: PickWords<Picked> = {
  unit: unitIds,
  mixedBy: ["shares", "target"],
  base: baseNames,
  titrantLye: ["other", "same"],
  chargeUnit: ["%", "g/L"],
  chargeIs: ["", "pure", "as weighed"],
  methanolBy: ["ratio", "volume"],
  pounds: ["no", "yes"],
};

const lotsFrom = (value: unknown): ChosenLot[] =>
  listOf(value)
    .filter(isObject)
    .map(({ lot, share }) => ({ lot: textOf(lot), share: textOf(share) }))
    .filter(({ lot }, at, all) => lot !== "" && all.findIndex((e) => e.lot === lot) === at)
    .slice(0, mostLots);

export function draftFrom(value: unknown): Draft {
  const usual = newDraft();
  if (!isObject(value) || value.version !== 1) return usual;
  const words = objectOf(value.words);
  return {
    version: 1,
    step: stepIds.find((id) => id === value.step) ?? usual.step,
    lots: lotsFrom(value.lots),
    typed: typedFrom(value.typed, numberFieldIds),
    picked: pickedFrom(value.picked, usual.picked, picks),
    words: { batch: textOf(words.batch), lyeLot: textOf(words.lyeLot), note: textOf(words.note) },
    isRecorded: value.isRecorded === true,
  };
}

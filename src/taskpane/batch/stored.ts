/** A batch out of storage, believed part by part: what is not of the right kind is left out. */
import {
  type ChosenLot,
  type Draft,
  mostLots,
  newDraft,
  type Picked,
  stepIds,
  unitIds,
} from "./draft";
import { numberFieldIds } from "./fields";

type Unknown = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Unknown =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const text = (value: unknown): string => (typeof value === "string" ? value : "");

/** The words each pick may be. */
const picks: { [Key in keyof Picked]: readonly Picked[Key][] } = {
  unit: unitIds,
  mixedBy: ["shares", "target"],
  base: ["KOH", "NaOH", "KOCH3", "NaOCH3"],
  titrantLye: ["other", "same"],
  chargeUnit: ["%", "g/L"],
  chargeIs: ["", "pure", "as weighed"],
  methanolBy: ["ratio", "volume"],
  pounds: ["no", "yes"],
};

function pickedFrom(value: unknown, usual: Picked): Picked {
  const found = isObject(value) ? value : {};
  const good = Object.entries(picks).filter(([key, words]) =>
    (words as readonly unknown[]).includes(found[key]),
  );
  return { ...usual, ...Object.fromEntries(good.map(([key]) => [key, found[key]])) };
}

const typedFrom = (value: unknown): Draft["typed"] => {
  const found = isObject(value) ? value : {};
  return Object.fromEntries(
    numberFieldIds.map((id) => [id, text(found[id])] as const).filter(([, typed]) => typed !== ""),
  );
};

const lotsFrom = (value: unknown): ChosenLot[] =>
  (Array.isArray(value) ? value : [])
    .filter(isObject)
    .map(({ lot, share }) => ({ lot: text(lot), share: text(share) }))
    .filter(({ lot }, at, all) => lot !== "" && all.findIndex((e) => e.lot === lot) === at)
    .slice(0, mostLots);

export function draftFrom(value: unknown): Draft {
  const usual = newDraft();
  if (!isObject(value) || value.version !== 1) return usual;
  const words = isObject(value.words) ? value.words : {};
  return {
    version: 1,
    step: stepIds.find((id) => id === value.step) ?? usual.step,
    lots: lotsFrom(value.lots),
    typed: typedFrom(value.typed),
    picked: pickedFrom(value.picked, usual.picked),
    words: { batch: text(words.batch), lyeLot: text(words.lyeLot), note: text(words.note) },
    isRecorded: value.isRecorded === true,
  };
}

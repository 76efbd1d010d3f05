/** A draft out of storage, believed part by part: what is not of the right kind is left out. */
import { baseNames } from "../../core/reference/bases";
import { oils } from "../../core/reference/oils";
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
import { type Draft, listIds, newDraft, type Picked, stepIds } from "./draft";
import { numberFieldIds } from "./fields";

const texts = (value: unknown): string[] => [
  ...new Set(
    listOf(value)
      .map(textOf)
      .filter((each) => each !== ""),
  ),
];

const picks: PickWords<Picked> = {
  unit: unitIds,
  sizesBy: ["list", "steps"],
  oil: [...oils.map(({ name }) => name), ""],
  by: ["acid", "assay", "charge", "base"],
  acidFrom: ["typed", "lot"],
  base: baseNames,
  form: ["table", "one-formula"],
  place: ["new-sheet", "cell"],
};

export function draftFrom(value: unknown): Draft {
  const usual = newDraft();
  if (!isObject(value) || value.version !== 1) return usual;
  const lists = objectOf(value.lists);
  return {
    version: 1,
    step: stepIds.find((id) => id === value.step) ?? usual.step,
    typed: typedFrom(value.typed, numberFieldIds),
    lists: Object.fromEntries(listIds.map((id) => [id, textOf(lists[id])])) as Draft["lists"],
    picked: pickedFrom(value.picked, usual.picked, picks),
    lots: texts(value.lots),
    lot: textOf(value.lot),
    bases: baseNames.filter((name) => texts(value.bases).includes(name)),
  };
}

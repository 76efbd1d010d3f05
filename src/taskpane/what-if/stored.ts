/** A draft out of storage, believed part by part: what is not of the right kind is left out. */
import { bases } from "../../core/reference/bases";
import { oils } from "../../core/reference/oils";
import { type Draft, listIds, newDraft, type Picked, stepIds, unitIds } from "./draft";
import { numberFieldIds } from "./fields";

type Unknown = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Unknown =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const text = (value: unknown): string => (typeof value === "string" ? value : "");
const object = (value: unknown): Unknown => (isObject(value) ? value : {});
const texts = (value: unknown): string[] => [
  ...new Set((Array.isArray(value) ? value : []).map(text).filter((each) => each !== "")),
];

const baseNames = bases.map(({ name }) => name);

/** The words each pick may be. */
const picks: { [Key in keyof Picked]: readonly Picked[Key][] } = {
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
  const [typed, lists, picked] = [object(value.typed), object(value.lists), object(value.picked)];
  const good = Object.entries(picks).filter(([key, words]) =>
    (words as readonly unknown[]).includes(picked[key]),
  );
  return {
    version: 1,
    step: stepIds.find((id) => id === value.step) ?? usual.step,
    typed: Object.fromEntries(
      numberFieldIds.map((id) => [id, text(typed[id])]).filter(([, each]) => each !== ""),
    ) as Draft["typed"],
    lists: Object.fromEntries(listIds.map((id) => [id, text(lists[id])])) as Draft["lists"],
    picked: { ...usual.picked, ...Object.fromEntries(good.map(([key]) => [key, picked[key]])) },
    lots: texts(value.lots),
    lot: text(value.lot),
    bases: baseNames.filter((name) => texts(value.bases).includes(name)),
  };
}

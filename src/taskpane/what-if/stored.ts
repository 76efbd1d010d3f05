/** A draft out of storage, believed part by part: what is not of the right kind is left out. */
import { baseNames } from "../../core/reference/bases";
import { isObject, listOf, objectOf, textOf } from "../drafts/believed";
import { storedEntered } from "../stepped/entered";
import { type Draft, newDraft } from "./draft";
import { type ListId, lists } from "./fields";
import { whatIf } from "./what-if";

const texts = (value: unknown): string[] => [
  ...new Set(
    listOf(value)
      .map(textOf)
      .filter((each) => each !== ""),
  ),
];

export function draftFrom(value: unknown): Draft {
  if (!isObject(value) || value.version !== 1) return newDraft();
  const found = objectOf(value.lists);
  return {
    version: 1,
    ...storedEntered(whatIf, value),
    lists: Object.fromEntries(Object.keys(lists).map((id) => [id, textOf(found[id])])) as Record<
      ListId,
      string
    >,
    lots: texts(value.lots),
    lot: textOf(value.lot),
    usedAllTheSame: texts(value.usedAllTheSame),
    bases: baseNames.filter((name) => texts(value.bases).includes(name)),
  };
}

/** A titration out of storage, believed part by part; an unreadable draft is no draft. */
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
import { type Draft, newDraft, type Picked, type Reading, type StepId, stepIds } from "./draft";
import { type NumberFieldId, numberFields } from "./fields";
import { readTyped } from "../widgets/typed-number";

/** Oil and indicator are free words. */
const picks: PickWords<Picked> = {
  base: baseNames,
  way: ["molarity", "normality", "gramsPerLitre", "percent", "weighed", "phthalate", "certified"],
  assay: ["known", "same-lye"],
  oneTenth: ["", "molarity", "percent"],
  stage: ["as received", "dried", "after acid step", "blend"],
  oil: "any",
  sample: ["weighed", "by volume"],
  masses: ["one", "own"],
  blank: ["", "titrated", "neutralised"],
  reading: ["used", "start and end"],
  indicator: "any",
  seconds: ["", "15", "30"],
};

const isFigure = (value: unknown): value is string =>
  typeof value === "string" && readTyped(value, ".").kind === "number";

function readingFrom(value: unknown): Reading[] {
  if (!isObject(value) || !isFigure(value.used)) return [];
  const { start, end, mass, omitted } = value;
  return [
    {
      used: value.used,
      ...(isFigure(start) && isFigure(end) ? { start, end } : {}),
      ...(isFigure(mass) ? { mass } : {}),
      ...(typeof omitted === "string" ? { omitted } : {}),
    },
  ];
}

const readingsFrom = (value: unknown, most: number): Reading[] =>
  listOf(value).flatMap(readingFrom).slice(0, most);

export function draftFrom(value: unknown): Draft | undefined {
  if (!isObject(value) || value.version !== 1 || textOf(value.id) === "") return undefined;
  const usual = newDraft(textOf(value.id), textOf(value.begunOn));
  const words = objectOf(value.words);
  return {
    ...usual,
    step: stepIds.find((id) => id === value.step) ?? ("titrant" satisfies StepId),
    typed: typedFrom(value.typed, Object.keys(numberFields) as NumberFieldId[]),
    picked: pickedFrom(value.picked, usual.picked, picks),
    words: {
      lot: textOf(words.lot),
      operator: textOf(words.operator),
      note: textOf(words.note),
      checkedOn: textOf(words.checkedOn),
    },
    titres: readingsFrom(value.titres, 6),
    blanks: readingsFrom(value.blanks, 3),
    isRecorded: value.isRecorded === true,
  };
}

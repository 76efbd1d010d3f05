/**
 * A draft out of storage. It may have been written by an older version, by a crash, or by hand, so it
 * is believed only part by part: what is not of the right kind is left out, and an unreadable draft is
 * no draft.
 */
import {
  type Draft,
  newDraft,
  type Picked,
  type Reading,
  type StepId,
  stepIds,
} from "../titrate/draft";
import { type NumberFieldId, numberFields } from "../titrate/fields";
import { readTyped } from "../widgets/typed-number";

type Unknown = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Unknown =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const text = (value: unknown): string => (typeof value === "string" ? value : "");

/** The words each pick may be. Oil and indicator are free words. */
const picks: { [Key in keyof Picked]: readonly Picked[Key][] | "any" } = {
  base: ["KOH", "NaOH", "KOCH3", "NaOCH3"],
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

function pickedFrom(value: unknown, usual: Picked): Picked {
  const found = isObject(value) ? value : {};
  const good = Object.entries(picks).filter(([key, words]) => {
    const word = found[key];
    return typeof word === "string" && (words === "any" || (words as string[]).includes(word));
  });
  return { ...usual, ...Object.fromEntries(good.map(([key]) => [key, found[key]])) };
}

function typedFrom(value: unknown): Draft["typed"] {
  const found = isObject(value) ? value : {};
  return Object.fromEntries(
    (Object.keys(numberFields) as NumberFieldId[])
      .map((id) => [id, text(found[id])] as const)
      .filter(([, typed]) => typed !== ""),
  );
}

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
  (Array.isArray(value) ? value : []).flatMap(readingFrom).slice(0, most);

export function draftFrom(value: unknown): Draft | undefined {
  if (!isObject(value) || value.version !== 1 || text(value.id) === "") return undefined;
  const usual = newDraft(text(value.id), text(value.begunOn));
  const words = isObject(value.words) ? value.words : {};
  return {
    ...usual,
    step: stepIds.find((id) => id === value.step) ?? ("titrant" satisfies StepId),
    typed: typedFrom(value.typed),
    picked: pickedFrom(value.picked, usual.picked),
    words: {
      lot: text(words.lot),
      operator: text(words.operator),
      note: text(words.note),
      checkedOn: text(words.checkedOn),
    },
    titres: readingsFrom(value.titres, 6),
    blanks: readingsFrom(value.blanks, 3),
    isRecorded: value.isRecorded === true,
  };
}

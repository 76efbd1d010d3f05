/** A titration out of storage, believed part by part; an unreadable draft is no draft. */
import { isObject, listOf, objectOf, textOf } from "../drafts/believed";
import { storedPicked } from "../fields/pick-facts";
import { storedEntered } from "../stepped/entered";
import { readTyped } from "../widgets/typed-number";
import { type Draft, type Habits, mostReadings, newDraft, type Reading } from "./draft";
import { titration } from "./titration";

const isFigure = (value: unknown): value is string =>
  typeof value === "string" && readTyped(value, ".").kind === "number";

function readingFrom(value: unknown): Reading[] {
  if (!isObject(value) || !isFigure(value.used)) return [];
  const { start, end, mass, omitted, isByProbe } = value;
  return [
    {
      used: value.used,
      ...(isFigure(start) && isFigure(end) ? { start, end } : {}),
      ...(isFigure(mass) ? { mass } : {}),
      ...(isByProbe === true ? { isByProbe } : {}),
      ...(typeof omitted === "string" ? { omitted } : {}),
    },
  ];
}

const readingsFrom = (value: unknown, most: number): Reading[] =>
  listOf(value).flatMap(readingFrom).slice(0, most);

function habitsFrom(value: unknown): Habits {
  const found = objectOf(value);
  const { reading, indicator } = storedPicked(titration.picks, found);
  return {
    ...("reading" in found ? { reading } : {}),
    ...("indicator" in found ? { indicator } : {}),
  };
}

export function draftFrom(value: unknown): Draft | undefined {
  if (!isObject(value) || value.version !== 1 || textOf(value.id) === "") return undefined;
  return {
    ...newDraft(textOf(value.id), textOf(value.begunOn)),
    ...storedEntered(titration, value),
    habits: habitsFrom(value.habits),
    titres: readingsFrom(value.titres, mostReadings.titres),
    blanks: readingsFrom(value.blanks, mostReadings.blanks),
    blanksOf: textOf(value.blanksOf),
    usedAllTheSame: textOf(value.usedAllTheSame),
    isRecorded: value.isRecorded === true,
  };
}

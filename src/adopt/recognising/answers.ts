/** What a person answered about a logbook's own words: kept with its columns. */
import { isSized, measureNamed } from "../../core/quantity/measures";
import { amountUnits, type AmountUnit } from "../../core/quantity/units";
import { unitAlone } from "./heading";
import { columnOf } from "./mapping";
import { nationOf } from "./measures/measured";
import type { Answer, EmptyBlank, LogbookMapping } from "./shape";
import { type Commas, typedFigure } from "./typed-number";
import { amountUnitOf, amountWordIn, unitWritten } from "./written-units";

export { type Answer, type EmptyBlank, emptyBlanks } from "./shape";

/** As it stands on a sheet and in the pane. */
export const emptyBlankWords: Readonly<Record<EmptyBlank, string>> = {
  day: "one blank for the day",
  above: "the last one written above",
  none: "nothing to subtract",
  unknown: "not known",
};

/** "Drums." and "drum" are one word. */
export const wordKey = (word: string): string =>
  word
    .trim()
    .toLowerCase()
    .replace(/\.$/, "")
    .replace(/(?<=..)s$/, "");

const keyOf = (answer: Answer): string =>
  answer.ask === "blank" || answer.ask === "commas"
    ? answer.ask
    : `${answer.ask} ${wordKey(answer.word)} ${answer.ask === "size" ? answer.in : ""}`;

const isTakenAway = (answer: Answer): boolean =>
  (answer.ask === "commas" && answer.means === "unsaid") ||
  (answer.ask === "unit" && answer.litres.trim() === "") ||
  (answer.ask === "size" && answer.size.trim() === "");

/** An answer given or changed; an empty one takes it away. */
export function withAnswer(mapping: LogbookMapping, answer: Answer): LogbookMapping {
  const others = (mapping.answers ?? []).filter((each) => keyOf(each) !== keyOf(answer));
  return { ...mapping, answers: isTakenAway(answer) ? others : [...others, answer] };
}

export const emptyBlankOf = ({ answers = [] }: LogbookMapping): EmptyBlank | undefined =>
  answers.flatMap((each) => (each.ask === "blank" ? [each.means] : []))[0];

export const commasAnswered = ({ answers = [] }: LogbookMapping): Commas =>
  answers.flatMap((each) => (each.ask === "commas" ? [each.means] : []))[0] ?? "unsaid";

/** What a word means that stands where a blank should. */
export const blankWordMeans = (
  { answers = [] }: LogbookMapping,
  word: string,
): EmptyBlank | undefined =>
  answers.flatMap((each) =>
    each.ask === "word" && wordKey(each.word) === wordKey(word) ? [each.means] : [],
  )[0];

export const litresTyped = ({ answers = [] }: LogbookMapping, word: string): string =>
  answers.flatMap((each) =>
    each.ask === "unit" && wordKey(each.word) === wordKey(word) ? [each.litres] : [],
  )[0] ?? "";

export interface MeantUnit {
  readonly unit: AmountUnit;
  /** How many of the unit one of them is. */
  readonly times: number;
}

const unitCalled = (wanted: string): AmountUnit =>
  amountUnits.find(({ name }) => name === wanted) as AmountUnit;
const litre = unitCalled("l");

/** The unit of an amount of oil as a heading was read to name it: fluid ounces and cups count litres. */
export function amountMeant(unit: string | undefined, times?: number): MeantUnit | undefined {
  const known = amountUnitOf(unit);
  if (known) return { unit: known, times: 1 };
  if (isSized(unit)) return times === undefined ? undefined : { unit: litre, times };
  const measure = measureNamed(unit);
  const inGrams = measure?.factor?.toNumber();
  if (!measure || inGrams === undefined) return undefined;
  return { unit: measure.measures === "mass" ? unitCalled("kg") : litre, times: inGrams / 1000 };
}

/** What a word beside an amount means by itself; a gallon is that of the nation the book names. */
export function meantByItself(mapping: LogbookMapping, word: string): MeantUnit | undefined {
  const known = unitWritten(word);
  if (known) return { unit: known, times: 1 };
  const unit = unitAlone(word);
  if (unit === undefined) return undefined;
  const nation = nationOf([...mapping.columns, ...mapping.constants]);
  return amountMeant(unit) ?? (nation && amountMeant(`${nation} ${unit}`));
}

/** The unit a word beside an amount means: by itself, or as it was answered; else nobody knows. */
export function unitMeant(mapping: LogbookMapping, word: string): MeantUnit | undefined {
  const known = meantByItself(mapping, word);
  if (known) return known;
  const times = typedFigure(litresTyped(mapping, word));
  return times !== undefined && times > 0 ? { unit: litre, times } : undefined;
}

/** What the heading of the amounts counts them in, where that is no unit; "" otherwise. */
export function amountWord(mapping: LogbookMapping): string {
  const column = columnOf(mapping, "oilAmount");
  return column && column.unit === undefined ? amountWordIn(column.heading) : "";
}

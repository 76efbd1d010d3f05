/** My bench, as far as it is said rather than done: a field or a list for each setting of the table. */
import {
  type BenchId,
  benchIds,
  benchSettings,
  type BenchSetting,
  type ChoiceSetting,
  type FigureSetting,
} from "../../workbook/tables/bench";
import type { Base } from "../../core/reference/bases";
import { baseChoices } from "../fields/bases";
import { numberField } from "../fields/number-facts";
import type { PickFact } from "../fields/pick-facts";
import type { NumberFieldFact } from "../widgets/judged";
import type { SteppedTask, WordFact } from "../stepped/entered";

type Settings = typeof benchSettings;
export type BenchFigure = {
  [Id in BenchId]: Settings[Id] extends FigureSetting ? Id : never;
}[BenchId];
export type BenchChoice = {
  [Id in BenchId]: Settings[Id] extends ChoiceSetting ? Id : never;
}[BenchId];
export type BenchText = Exclude<BenchId, BenchFigure | BenchChoice>;

const settingOf = (id: BenchId): BenchSetting => benchSettings[id];
export const isFigure = (id: BenchId): id is BenchFigure => settingOf(id).limit !== undefined;
export const isChoice = (id: BenchId): id is BenchChoice => settingOf(id).words !== undefined;
export const isText = (id: BenchId): id is BenchText => !isFigure(id) && !isChoice(id);

const fieldOf = ({ name, limit, unit, note }: BenchSetting): [] | [NumberFieldFact] =>
  limit === undefined ? [] : [numberField(name, limit, { unit, hint: note, isOptional: true })];

const longWords = new Map<string, string>(baseChoices);

const pickOf = ({ name, words = [] }: BenchSetting): PickFact => ({
  label: name,
  look: "list",
  choices: [["", "Not said"], ...words.map((word) => [word, longWords.get(word) ?? word] as const)],
  first: "",
  isKept: false,
  isFree: false,
});

export const bench = {
  label: "My bench",
  steps: { bench: "My bench" },
  fields: Object.fromEntries(
    benchIds.flatMap((id) => fieldOf(settingOf(id)).map((fact) => [id, fact])),
  ) as Record<BenchFigure, NumberFieldFact>,
  picks: Object.fromEntries(
    benchIds.filter(isChoice).map((id) => [id, pickOf(settingOf(id))]),
  ) as Record<BenchChoice, PickFact>,
  words: Object.fromEntries(
    benchIds
      .filter(isText)
      .map((id) => [id, { label: settingOf(id).name, hint: settingOf(id).note }]),
  ) as Record<BenchText, WordFact>,
} as const satisfies SteppedTask;

/** What stands under one heading of the form. */
export const benchGroups: readonly { readonly name: string; readonly ids: readonly BenchId[] }[] = [
  { name: "Titrant and burette", ids: ["titrantBase", "molarity", "strengthPercent", "titreStep"] },
  { name: "Balance", ids: ["massStep"] },
  { name: "Lye", ids: ["base", "chargeUnit", "chargeIs"] },
  { name: "A batch", ids: ["unit", "amount", "vessel", "ratio", "limit"] },
];

/** Of each lye: its lot, its assay, its charge. */
export const lyeIds = (base: Base["name"]): readonly BenchId[] => [
  `lot${base}`,
  `assay${base}`,
  `charge${base}`,
];

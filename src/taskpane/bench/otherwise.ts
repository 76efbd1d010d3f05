/** What My bench says otherwise than a draft: only where the draft says something too. */
import type { BeginWith, Entered, FieldOf, SteppedTask } from "../stepped/entered";
import type { BenchValues } from "../../workbook/tables/bench";
import type { View as WhatIfView } from "../what-if/view-of";
import { whatIf } from "../what-if/what-if";
import { type DecimalMark, readTyped, withMark } from "../widgets/typed-number";
import { standingOf } from "./begin-from";
import { benchCharge } from "./charge";

/** A list that begins with a word of its own says nothing of who chose it. */
const neverEmpty: readonly string[] = ["base", "titrantBase"] satisfies (keyof BenchValues)[];

/** Does My bench say something of each figure here? */
export const saysAllOf = (bench: BenchValues, now: BenchValues): boolean => {
  const said: Readonly<Record<string, string | undefined>> = bench;
  return Object.keys(now).every(
    (setting) => neverEmpty.includes(setting) || (said[setting] ?? "").trim() !== "",
  );
};

function isSameFigure(one: string, other: string, mark: DecimalMark): boolean {
  const [a, b] = [readTyped(one, mark), readTyped(other, mark)];
  return a.kind === "number" && b.kind === "number" ? a.value.eq(b.value) : one === other;
}

/** @returns "Assay of the lye 90 %", and so on */
export function otherwise<Task extends SteppedTask>(
  task: Task,
  draft: Entered<Task>,
  { typed, picked }: BeginWith<Task>,
  mark: DecimalMark,
): string[] {
  const figures = Object.entries<string | undefined>(typed).flatMap(([id, text = ""]) => {
    const now = draft.typed[id as FieldOf<Task>] ?? "";
    const fact = task.fields[id];
    const isSame = now === "" || isSameFigure(now, text, mark);
    return isSame || !fact ? [] : [`${fact.label} ${text} ${fact.unit}`.trim()];
  });
  const picks = Object.entries<string | undefined>(picked).flatMap(([id, word]) => {
    const now = draft.picked[id as keyof Task["picks"]];
    const fact = task.picks[id];
    if (!fact || now === "" || now === word) return [];
    return [`${fact.label} ${fact.choices.find(([each]) => each === word)?.[1] ?? ""}`.trim()];
  });
  return [...picks, ...figures];
}

/** A table's own: its charge is percent there, and said as the bench says it. */
export function whatIfOtherwise(
  { draft, mark }: Pick<WhatIfView, "draft" | "mark">,
  values: BenchValues,
): string[] {
  const { typed, ...others } = standingOf(draft, values, mark);
  const { charge, ...figures } = typed;
  const own = benchCharge(values, draft.picked.base, draft.picked.oil);
  const now = draft.typed.charge ?? "";
  const isAnother = charge !== undefined && now !== "" && !isSameFigure(now, charge, mark);
  return [
    ...otherwise(whatIf, draft, { ...others, typed: figures }, mark),
    ...(own && isAnother ? [`${whatIf.fields.charge.label} ${withMark(own.words, mark)}`] : []),
  ];
}

/** What My bench says otherwise than a draft: only where the draft says something too. */
import type { BeginWith, Entered, FieldOf, SteppedTask } from "../stepped/entered";
import { type DecimalMark, readTyped } from "../widgets/typed-number";

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

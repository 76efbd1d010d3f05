/**
 * What is entered in a task that goes step by step: where one is, and what was typed, picked and
 * written. The task says its steps, fields, picks and words once; the parts of its draft, their first
 * values, what stays for the next draft and what is believed of a stored one follow from that.
 */
import { objectOf, textOf, type Unknown } from "../drafts/believed";
import {
  firstPicked,
  keptPicked,
  type PickedOf,
  type Picks,
  storedPicked,
} from "../fields/pick-facts";
import type { NumberFieldFact } from "../widgets/judged";

/** A field for words, or for a day. */
export interface WordFact {
  readonly label: string;
  readonly hint?: string;
  readonly type?: "date";
  /** It stays from one draft to the next. */
  readonly isKept?: boolean;
  /** The task goes no further without it. */
  readonly isNeeded?: boolean;
}

export interface SteppedTask {
  /** For a listener: "Steps of the titration". */
  readonly label: string;
  /** What each step is called, in their order. */
  readonly steps: Readonly<Record<string, string>>;
  readonly fields: Readonly<Record<string, NumberFieldFact>>;
  readonly picks: Picks;
  readonly words: Readonly<Record<string, WordFact>>;
}

export type StepOf<Task extends SteppedTask> = keyof Task["steps"] & string;
export type FieldOf<Task extends SteppedTask> = keyof Task["fields"] & string;
export type WordOf<Task extends SteppedTask> = keyof Task["words"] & string;

/** The parts that every draft has. */
export interface Entered<Task extends SteppedTask> {
  readonly step: StepOf<Task>;
  /** As typed, by field; what is left out is empty. */
  readonly typed: Readonly<Partial<Record<FieldOf<Task>, string>>>;
  readonly picked: PickedOf<Task["picks"]>;
  readonly words: Readonly<Record<WordOf<Task>, string>>;
}

/** First figures and picks, from what the workbook says of the bench; what is left out stays. */
export interface BeginWith<Task extends SteppedTask> {
  readonly do: "begin-with";
  readonly typed: Readonly<Partial<Record<FieldOf<Task>, string>>>;
  readonly picked: Partial<PickedOf<Task["picks"]>>;
  readonly words?: Readonly<Partial<Record<WordOf<Task>, string>>>;
}

export type EnterAction<Task extends SteppedTask> =
  | BeginWith<Task>
  | { readonly do: "type"; readonly field: FieldOf<Task>; readonly text: string }
  | { readonly do: "pick"; readonly picked: Partial<PickedOf<Task["picks"]>> }
  | { readonly do: "write"; readonly words: Readonly<Partial<Record<WordOf<Task>, string>>> }
  | { readonly do: "go"; readonly step: StepOf<Task> };

const stepsOf = <Task extends SteppedTask>(task: Task): readonly StepOf<Task>[] =>
  Object.keys(task.steps);

/** A draft after one of the acts that every task has. */
export function enter<Draft extends Entered<Task>, Task extends SteppedTask>(
  draft: Draft,
  action: EnterAction<Task>,
): Draft {
  switch (action.do) {
    case "type":
      return { ...draft, typed: { ...draft.typed, [action.field]: action.text } };
    case "pick":
      return { ...draft, picked: { ...draft.picked, ...action.picked } };
    case "begin-with":
      return {
        ...draft,
        typed: { ...draft.typed, ...action.typed },
        picked: { ...draft.picked, ...action.picked },
        words: { ...draft.words, ...action.words },
      };
    case "write":
      return { ...draft, words: { ...draft.words, ...action.words } };
    case "go":
      return { ...draft, step: action.step };
  }
}

/** Only what the draft has nothing of yet. */
export const intoGaps = <Task extends SteppedTask>(
  draft: Entered<Task>,
  { typed, words }: BeginWith<Task>,
): BeginWith<Task> => ({
  do: "begin-with",
  typed: Object.fromEntries(
    Object.entries(typed).filter(([id]) => (draft.typed[id as FieldOf<Task>] ?? "") === ""),
  ) as BeginWith<Task>["typed"],
  picked: {},
  words: Object.fromEntries(
    Object.entries(words ?? {}).filter(([id]) => draft.words[id as WordOf<Task>] === ""),
  ) as Partial<Record<WordOf<Task>, string>>,
});

const each = <Id extends string, From, To>(
  facts: Readonly<Record<string, From>>,
  how: (id: Id, fact: From) => To,
) =>
  Object.fromEntries(
    Object.entries(facts).map(([id, fact]) => [id, how(id as Id, fact)]),
  ) as Record<Id, To>;

const filled = <Id extends string>(
  typed: Readonly<Record<Id, string>>,
): Readonly<Partial<Record<Id, string>>> =>
  Object.fromEntries(Object.entries(typed).filter(([, text]) => text !== "")) as Partial<
    Record<Id, string>
  >;

/** A fresh draft's parts. After another it keeps what the task says is kept. */
export function firstEntered<Task extends SteppedTask>(
  task: Task,
  before?: Entered<Task>,
): Entered<Task> {
  const [step] = stepsOf(task);
  if (step === undefined) throw new Error("a task without steps");
  const kept = before && {
    typed: filled(
      each<FieldOf<Task>, NumberFieldFact, string>(task.fields, (id, { isKept }) =>
        isKept ? (before.typed[id] ?? "") : "",
      ),
    ),
    picked: keptPicked(task.picks as Task["picks"], before.picked),
  };
  return {
    step,
    typed: kept?.typed ?? ({} as Entered<Task>["typed"]),
    picked: kept?.picked ?? firstPicked(task.picks as Task["picks"]),
    words: each<WordOf<Task>, WordFact, string>(task.words, (id, { isKept }) =>
      isKept ? (before?.words[id] ?? "") : "",
    ),
  };
}

/**
 * The parts out of storage, believed one by one: what is not of the right kind is left out.
 * @param stored a draft that may have been written by an older version, by a crash, or by hand
 */
export function storedEntered<Task extends SteppedTask>(
  task: Task,
  stored: Unknown,
): Entered<Task> {
  const typed = objectOf(stored.typed);
  const words = objectOf(stored.words);
  const steps = stepsOf(task);
  return {
    step: steps.find((id) => id === stored.step) ?? firstEntered(task).step,
    typed: filled(
      each<FieldOf<Task>, NumberFieldFact, string>(task.fields, (id) => textOf(typed[id])),
    ),
    picked: storedPicked(task.picks as Task["picks"], objectOf(stored.picked)),
    words: each<WordOf<Task>, WordFact, string>(task.words, (id) => textOf(words[id])),
  };
}

/**
 * What every part of a stepped task sees and may do, with the parts that stand on it: a field for each
 * thing the task says it asks for, a figure in this person's marks, and the list of what is still wanted.
 */
import { createContext, type Ref, useContext } from "react";
import { temperatureBox } from "../fields/fahrenheit";
import type { NumberFigures } from "../fields/number-figures";
import type { PickFact } from "../fields/pick-facts";
import { Choice } from "../widgets/choice";
import { NumberField } from "../widgets/number-field";
import { PickList } from "../widgets/pick-list";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { WordField } from "../widgets/word-field";
import type {
  EnterAction,
  Entered,
  FieldOf,
  SteppedTask,
  StepOf,
  WordFact,
  WordOf,
} from "./entered";
import { Wants as WantsList, type WantsProps } from "./wants";

/** The least a desk has: a view of the draft, and a way to enter something into it. */
export interface TaskDesk<Task extends SteppedTask> {
  readonly view: {
    readonly draft: Entered<Task>;
    readonly figures: NumberFigures<FieldOf<Task>>;
    readonly mark: DecimalMark;
  };
  readonly act: (action: EnterAction<Task>) => void;
  /** Temperatures of oil are read in °F at this bench. */
  readonly isFahrenheit?: boolean;
}

export interface FigureProps<Field extends string> {
  readonly field: Field;
  /** Something else that is wrong with it. */
  readonly also?: string | undefined;
  readonly inputRef?: Ref<HTMLInputElement>;
}

export function taskDesk<Task extends SteppedTask, Desk extends TaskDesk<Task>>(task: Task) {
  const DeskContext = createContext<Desk | undefined>(undefined);

  function useDesk(): Desk {
    const desk = useContext(DeskContext);
    if (desk === undefined) throw new Error("a part of a task stands outside it");
    return desk;
  }

  /** A figure or a sentence in this person's way of writing numbers. */
  function useMark(): (text: string) => string {
    const { mark } = useDesk().view;
    return (text) => withMark(text, mark);
  }

  /** A number field of the draft. */
  function Figure({ field, also, inputRef }: FigureProps<FieldOf<Task>>) {
    const { view, act, isFahrenheit } = useDesk();
    const fact = view.figures.fact(field);
    const typed = view.draft.typed[field] ?? "";
    const box = fact.mayBeFahrenheit
      ? temperatureBox(fact, typed, isFahrenheit ?? false)
      : undefined;
    return (
      <NumberField
        fact={box?.fact ?? fact}
        text={box?.text ?? typed}
        judged={view.figures.judged(field)}
        also={also}
        onText={(text) => {
          act({ do: "type", field, text: box?.kept(text) ?? text });
        }}
        {...(inputRef ? { inputRef } : {})}
      />
    );
  }

  /** One of the task's picks. */
  function Choose({ field }: { field: keyof Task["picks"] & string }) {
    const { view, act } = useDesk();
    const fact = task.picks[field] as PickFact;
    const Look = fact.look === "list" ? PickList : Choice;
    return (
      <Look
        label={fact.label}
        isNeeded={fact.isNeeded}
        value={view.draft.picked[field]}
        options={fact.choices}
        onPick={(word) => {
          act({ do: "pick", picked: { [field]: word } as Partial<typeof view.draft.picked> });
        }}
      />
    );
  }

  /** A field for words of the draft. */
  function Words({ field }: { field: WordOf<Task> }) {
    const { view, act } = useDesk();
    const { label, hint, type, isNeeded } = task.words[field] as WordFact;
    return (
      <WordField
        label={label}
        value={view.draft.words[field]}
        onText={(text) => {
          act({ do: "write", words: { [field]: text } as Partial<typeof view.draft.words> });
        }}
        isNeeded={isNeeded}
        {...(hint === undefined ? {} : { hint })}
        {...(type === undefined ? {} : { type })}
      />
    );
  }

  function Wants(props: Omit<WantsProps<StepOf<Task>>, "names" | "inMark">) {
    const names = task.steps as Readonly<Record<StepOf<Task>, string>>;
    return <WantsList {...props} names={names} inMark={useMark()} />;
  }

  return { DeskProvider: DeskContext.Provider, useDesk, useMark, Figure, Choose, Words, Wants };
}

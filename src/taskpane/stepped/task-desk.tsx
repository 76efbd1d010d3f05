/**
 * What every part of a stepped task sees and may do, with the parts that stand on it: a number field, a
 * figure in this person's marks, and the list of what is still wanted.
 */
import { createContext, type Ref, useContext } from "react";
import type { NumberFigures, TypedNumbers } from "../fields/number-figures";
import { NumberField } from "../widgets/number-field";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { Wants as WantsList, type WantsProps } from "./wants";

/** The least a desk has: a view of the draft, and a way to type into it. */
export interface TaskDesk<Field extends string> {
  readonly view: {
    readonly draft: { readonly typed: TypedNumbers<Field> };
    readonly figures: NumberFigures<Field>;
    readonly mark: DecimalMark;
  };
  readonly act: (action: {
    readonly do: "type";
    readonly field: Field;
    readonly text: string;
  }) => void;
}

export interface FigureProps<Field extends string> {
  readonly field: Field;
  /** Something else that is wrong with it. */
  readonly also?: string | undefined;
  readonly inputRef?: Ref<HTMLInputElement>;
}

/** @param stepNames what the steps are called */
export function taskDesk<Field extends string, Desk extends TaskDesk<Field>, Step extends string>(
  stepNames: Readonly<Record<Step, string>>,
) {
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
  function Figure({ field, also, inputRef }: FigureProps<Field>) {
    const { view, act } = useDesk();
    return (
      <NumberField
        fact={view.figures.fact(field)}
        text={view.draft.typed[field] ?? ""}
        judged={view.figures.judged(field)}
        also={also}
        onText={(text) => {
          act({ do: "type", field, text });
        }}
        {...(inputRef ? { inputRef } : {})}
      />
    );
  }

  function Wants(props: Omit<WantsProps<Step>, "names" | "inMark">) {
    return <WantsList {...props} names={stepNames} inMark={useMark()} />;
  }

  return { DeskProvider: DeskContext.Provider, useDesk, useMark, Figure, Wants };
}

/** What every part of the task sees and may do. */
import { createContext, type Ref, useContext } from "react";
import { NumberField } from "../../widgets/number-field";
import type { NumberFieldFact } from "../../widgets/judged";
import { withMark } from "../../widgets/typed-number";
import { numberFields, type NumberFieldId } from "../fields";
import type { Before, BenchAction } from "../undo";
import type { View } from "../view-of";

export interface Desk {
  readonly view: View;
  readonly act: (action: BenchAction) => void;
  /** What the next undo takes back; undefined when there is nothing. */
  readonly undoes: Before | undefined;
}

const DeskContext = createContext<Desk | undefined>(undefined);

export const DeskProvider = DeskContext.Provider;

export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (desk === undefined) throw new Error("a part of the titration stands outside it");
  return desk;
}

/** A figure or a sentence in this person's way of writing numbers. */
export const useMark = (): ((text: string) => string) => {
  const { mark } = useDesk().view;
  return (text) => withMark(text, mark);
};

export interface FigureProps {
  readonly field: NumberFieldId;
  readonly also?: string | undefined;
  readonly inputRef?: Ref<HTMLInputElement>;
}

/** A number field of the draft. */
export function Figure({ field, also, inputRef }: FigureProps) {
  const { view, act } = useDesk();
  const fact: NumberFieldFact = numberFields[field];
  return (
    <NumberField
      fact={fact}
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

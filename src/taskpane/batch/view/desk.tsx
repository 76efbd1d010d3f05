/** What every part of the batch task sees and may do. */
import { createContext, useContext } from "react";
import { NumberField } from "../../widgets/number-field";
import { withMark } from "../../widgets/typed-number";
import { factOf } from "../figures";
import type { NumberFieldId } from "../fields";
import type { Action } from "../reducer";
import type { View } from "../view-of";

export interface Desk {
  readonly view: View;
  readonly act: (action: Action) => void;
}

const DeskContext = createContext<Desk | undefined>(undefined);

export const DeskProvider = DeskContext.Provider;

export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (desk === undefined) throw new Error("a part of the batch stands outside it");
  return desk;
}

/** A figure or a sentence in this person's way of writing numbers. */
export const useMark = (): ((text: string) => string) => {
  const { mark } = useDesk().view;
  return (text) => withMark(text, mark);
};

/** A number field of the draft. */
export function Figure({ field }: { field: NumberFieldId }) {
  const { view, act } = useDesk();
  return (
    <NumberField
      fact={factOf(view.draft, field)}
      text={view.draft.typed[field] ?? ""}
      judged={view.figures.judged(field)}
      onText={(text) => {
        act({ do: "type", field, text });
      }}
    />
  );
}

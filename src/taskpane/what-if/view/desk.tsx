/** What every part of the task sees and may do, and its fields. */
import { Field, Input } from "@fluentui/react-components";
import { createContext, useContext, useState } from "react";
import { NumberField } from "../../widgets/number-field";
import { withMark } from "../../widgets/typed-number";
import type { ListId } from "../draft";
import type { NumberFieldId } from "../fields";
import { factOf, listFactOf } from "../figures";
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
  if (desk === undefined) throw new Error("a part of the table stands outside its task");
  return desk;
}

/** A figure or a sentence in this person's way of writing numbers. */
export const useMark = (): ((text: string) => string) => {
  const { mark } = useDesk().view;
  return (text) => withMark(text, mark);
};

/** A number field of the draft. */
export function Figure({ field, also }: { field: NumberFieldId; also?: string | undefined }) {
  const { view, act } = useDesk();
  return (
    <NumberField
      fact={factOf(view.draft, field)}
      text={view.draft.typed[field] ?? ""}
      judged={view.figures.judged(field)}
      also={also}
      onText={(text) => {
        act({ do: "type", field, text });
      }}
    />
  );
}

/** A field for several figures. A space is needed, so its keyboard is the whole one. */
export function Figures({ list }: { list: ListId }) {
  const { view, act } = useDesk();
  const inMark = useMark();
  const [isTyping, setTyping] = useState(false);
  const fact = listFactOf(view.draft, list);
  const judged = view.figures.list(list);
  const wrong =
    judged.kind === "wrong" && !(judged.mayBecomeRight && isTyping) ? judged.sentence : undefined;
  return (
    <Field
      label={{
        children: (
          <>
            {fact.label}
            <span className="unseen">, {fact.unit}</span>
          </>
        ),
      }}
      {...(fact.hint === undefined ? {} : { hint: inMark(fact.hint) })}
      {...(wrong === undefined ? {} : { validationMessage: wrong })}
      validationState={wrong === undefined ? "none" : "error"}
    >
      <Input
        size="large"
        autoComplete="off"
        spellCheck={false}
        value={view.draft.lists[list]}
        onChange={(_, { value }) => {
          setTyping(true);
          act({ do: "list", list, text: value });
        }}
        onBlur={() => {
          setTyping(false);
        }}
        contentAfter={
          <span className="unit" aria-hidden="true">
            {fact.unit}
          </span>
        }
      />
    </Field>
  );
}

/** A field for several figures. A space is needed, so its keyboard is the whole one. */
import { Field, Input } from "@fluentui/react-components";
import { useState } from "react";
import { aroundFigure, Unit } from "../../widgets/field-parts";
import type { ListId } from "../fields";
import { listFactOf } from "../figures";
import { useDesk, useMark } from "./desk";

export function Figures({ list }: { list: ListId }) {
  const { view, act } = useDesk();
  const inMark = useMark();
  const [isTyping, setTyping] = useState(false);
  const fact = listFactOf(view.draft, list);
  const judged = view.figures.list(list);
  const wrong =
    judged.kind === "wrong" && !(judged.mayBecomeRight && isTyping) ? judged.sentence : undefined;
  const hint = fact.hint === undefined ? {} : { hint: inMark(fact.hint) };
  return (
    <Field {...aroundFigure({ ...fact, ...hint }, wrong)}>
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
        contentAfter={<Unit unit={fact.unit} />}
      />
    </Field>
  );
}

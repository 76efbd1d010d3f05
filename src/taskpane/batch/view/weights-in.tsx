/** What weights are said in beside kilograms: until somebody picks, as the oil is measured. */
import { Choice } from "../../widgets/choice";
import { inPounds, picks } from "../picks";
import { useDesk } from "./desk";

export function WeightsIn() {
  const { view, act } = useDesk();
  const { label, choices } = picks.pounds;
  return (
    <Choice
      label={label}
      value={inPounds(view.draft.picked)}
      options={choices}
      onPick={(pounds) => {
        act({ do: "pick", picked: { pounds } });
      }}
    />
  );
}

/** Compare: what differs from column to column, and everything else that a dose rests on. */
import { BasePick } from "../../fields/picks";
import { Choice } from "../../widgets/choice";
import { comparedChoices } from "../names";
import { AcidFigure, AcidValues } from "./acid";
import { Bases } from "./bases";
import { Charges } from "./charges";
import { Figure, useDesk } from "./desk";
import { Figures } from "./figures-field";

function OneBase() {
  const { view, act } = useDesk();
  return (
    <BasePick
      value={view.draft.picked.base}
      onPick={(base) => {
        act({ do: "pick", picked: { base } });
      }}
    />
  );
}

export function CompareStep() {
  const { view, act } = useDesk();
  const { by, base } = view.draft.picked;
  return (
    <>
      <Choice
        label="Compare"
        value={by}
        options={comparedChoices}
        onPick={(picked) => {
          act({ do: "pick", picked: { by: picked } });
        }}
      />
      {by === "acid" ? <AcidValues /> : <AcidFigure />}
      {by === "base" ? <Bases /> : <OneBase />}
      {by === "base" ? null : by === "assay" ? <Figures list="assay" /> : <Figure field="assay" />}
      {by === "base" ? null : (
        <>
          {by === "charge" ? <Figures list="charge" /> : <Figure field="charge" />}
          <Charges
            base={base}
            onTake={(text) => {
              act(
                by === "charge"
                  ? { do: "append", list: "charge", text }
                  : { do: "type", field: "charge", text },
              );
            }}
          />
        </>
      )}
      <Figure field="limit" />
    </>
  );
}

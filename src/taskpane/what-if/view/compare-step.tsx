/** Compare: what differs from column to column, and everything else that a dose rests on. */
import { AcidFigure, AcidValues } from "./acid";
import { Bases } from "./bases";
import { Charges } from "./charges";
import { Choose, Figure, useDesk } from "./desk";
import { Figures } from "./figures-field";

export function CompareStep() {
  const { view, act } = useDesk();
  const { by, base } = view.draft.picked;
  return (
    <>
      <Choose field="by" />
      {by === "acid" ? <AcidValues /> : <AcidFigure />}
      {by === "base" ? <Bases /> : <Choose field="base" />}
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

/** The base charge: as a person gives it, and the published ones to choose from, with sources. */
import { useState } from "react";
import { isProblem } from "../../../core/problem/problem";
import { PublishedCharges } from "../../fields/published-charges";
import { Say } from "../../widgets/say";
import { digits } from "../../widgets/shown-number";
import { Spoken } from "../../widgets/spoken";
import { Choose, Figure, useDesk, useMark } from "./desk";

function Published() {
  const { view, act } = useDesk();
  const inMark = useMark();
  const { base, chargeIs } = view.draft.picked;
  // it does not close under the finger that has just taken one
  const [isOpen] = useState(chargeIs === "");
  return (
    <PublishedCharges
      base={base}
      isOpen={isOpen}
      level={({ amount, unit }) => `${amount} ${unit === "%" ? "% of the oil" : unit}`}
      inMark={inMark}
      onTake={(charge) => {
        act({ do: "take-charge", charge });
      }}
    />
  );
}

function AsPure() {
  const { view } = useDesk();
  const inMark = useMark();
  const { charge } = view.working;
  const { chargeUnit, chargeIs } = view.draft.picked;
  if (charge === undefined || isProblem(charge)) return null;
  if (chargeUnit === "%" && chargeIs === "pure") return null;
  return <Say tone="know">{inMark(`That is ${digits(charge)} % of the oil, pure.`)}</Say>;
}

export function Charge() {
  const { view } = useDesk();
  const { base, chargeUnit } = view.draft.picked;
  return (
    <>
      <Choose field="chargeUnit" />
      <Figure field={chargeUnit === "%" ? "chargePercent" : "chargeGrams"} />
      <Choose field="chargeIs" />
      <Spoken>
        <AsPure />
      </Spoken>
      <Published key={base} />
    </>
  );
}

/** The base charge: as a person gives it, and the published ones to choose from, with sources. */
import { useState } from "react";
import { isProblem } from "../../../core/problem/problem";
import { PublishedCharges } from "../../fields/published-charges";
import { Choice } from "../../widgets/choice";
import { Say } from "../../widgets/say";
import { digits } from "../../widgets/shown-number";
import { Spoken } from "../../widgets/spoken";
import { Figure, useDesk, useMark } from "./desk";

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
  const { view, act } = useDesk();
  const { base, chargeUnit, chargeIs } = view.draft.picked;
  return (
    <>
      <Choice
        label="The base charge is given in"
        value={chargeUnit}
        options={[
          ["%", "% of the oil’s mass"],
          ["g/L", "g per litre"],
        ]}
        onPick={(unit) => {
          act({ do: "pick", picked: { chargeUnit: unit } });
        }}
      />
      <Figure field={chargeUnit === "%" ? "chargePercent" : "chargeGrams"} />
      <Choice
        label="The base charge is"
        value={chargeIs}
        options={[
          ["pure", "Pure base"],
          ["as weighed", "Lye as weighed"],
        ]}
        onPick={(is) => {
          act({ do: "pick", picked: { chargeIs: is } });
        }}
      />
      <Spoken>
        <AsPure />
      </Spoken>
      <Published key={base} />
    </>
  );
}

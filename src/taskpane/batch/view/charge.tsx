/** The base charge: as a person gives it, and the published levels to choose from, with sources. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { isProblem } from "../../../core/problem/problem";
import { publishedCharges } from "../../../core/reference/base-charges";
import { sources } from "../../../core/reference/sources";
import { Choice } from "../../widgets/choice";
import { Say } from "../../widgets/say";
import { digits } from "../../widgets/shown-number";
import { Spoken } from "../../widgets/spoken";
import { Figure, useDesk, useMark } from "./desk";

function Published() {
  const { view, act } = useDesk();
  const inMark = useMark();
  const { base, chargeIs } = view.draft.picked;
  // it does not close under the finger that has just taken a level
  const [isOpen] = useState(chargeIs === "");
  const levels = publishedCharges.filter((each) => each.base === base);
  return (
    <details className="more" open={isOpen}>
      <summary>Published base charges of {base}</summary>
      {levels.length === 0 ? (
        <p>No level is known here for {base}: ask who sold it.</p>
      ) : (
        <p>None is taken for granted. Each is pure base.</p>
      )}
      <ul className="levels">
        {levels.map((charge) => {
          const level = `${charge.amount} ${charge.unit === "%" ? "% of the oil" : charge.unit}`;
          return (
            <li key={`${charge.amount} ${charge.unit} ${charge.source}`}>
              <span>
                <strong>{inMark(level)}</strong>: {charge.about}.{" "}
                <span className="soft">{sources[charge.source]}</span>
              </span>
              <Button
                size="large"
                aria-label={inMark(`Take ${level}, ${charge.about}`)}
                onClick={() => {
                  act({ do: "take-charge", charge });
                }}
              >
                Take
              </Button>
            </li>
          );
        })}
      </ul>
    </details>
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

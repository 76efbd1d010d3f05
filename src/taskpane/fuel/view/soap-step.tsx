/** Free base and soap: two end points in one flask, and the metal they hold against 5 mg/kg. */
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { Colours } from "./colours";
import { Figure, useDesk, useMark } from "./desk";
import { Plain, Result } from "./results";

function Found() {
  const { view } = useDesk();
  const { soap } = view.working;
  if (!soap) return null;
  return (
    <>
      <Plain name="Soap" unit="mg/kg" found={soap.soap} />
      {soap.freeBase === undefined ? null : (
        <Plain name="Free base" unit="mg/kg" found={soap.freeBase} />
      )}
      <Result
        name={view.draft.picked.base.startsWith("K") ? "Potassium" : "Sodium"}
        unit="mg/kg"
        found={soap.metal}
        lacks="For a verdict: the burette step."
      />
    </>
  );
}

export function SoapStep() {
  const { view } = useDesk();
  const inMark = useMark();
  const strength = view.figures.value("soapMolarity");
  return (
    <>
      <p>
        Fuel in 2-propanol or acetone with 2 % of water. Hydrochloric acid to the first end point;
        bromophenol blue in; on to the second (AOCS Cc 17-95).
      </p>
      <Colours />
      <Figure field="soapMolarity" />
      {strength?.gte("0.05") ? (
        <Say tone="check">
          {inMark("Is it 0.01 mol/L? Some notes print 0.1: ten times the soap.")}
        </Say>
      ) : null}
      <Figure field="soapMass" />
      <Figure field="freeBaseTitre" />
      <Figure field="soapTitre" />
      <Figure field="soapBlank" />
      <Figure field="titreStep" />
      <Figure field="soapPercent" />
      <Spoken>
        <Found />
      </Spoken>
      <p className="soft">
        At most 5 mg/kg of sodium and potassium together (EN 14214:2012+A1:2014; ASTM D6751, 2009).
        All soap counts as oleate, carbonate too. The ± counts reading and titrant alone: one
        titration shows no scatter.
      </p>
    </>
  );
}

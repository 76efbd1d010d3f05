/** The acid value of the fuel, against 0.50. */
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { Figure, useDesk, useMark } from "./desk";
import { Result } from "./results";

export function AcidStep() {
  const { view } = useDesk();
  const inMark = useMark();
  const { acid, odd } = view.working;
  return (
    <>
      {view.draft.picked.washed === "no" ? (
        <Say tone="check">Soap hides acid: wash first, then titrate.</Say>
      ) : null}
      <Figure field="acidMolarity" />
      <Figure field="acidMass" />
      <Figure field="acidBlank" />
      <Figure field="acidTitre1" />
      <Figure field="acidTitre2" />
      <Figure field="acidTitre3" />
      <Figure field="titreStep" />
      <Figure field="massStep" />
      <Figure field="acidPercent" />
      <Spoken>
        {odd === undefined ? null : <Say tone="check">{inMark(odd)}</Say>}
        {acid ? (
          <Result
            name={odd === undefined ? "Acid value" : "Acid value, of titres that do not agree"}
            unit="mg KOH/g"
            found={acid}
            lacks="For a verdict: two titres or more, the burette step and the balance step."
          />
        ) : null}
      </Spoken>
      <p className="soft">At most 0.50 mg KOH/g (EN 14214:2012+A1:2014; ASTM D6751, 2009).</p>
    </>
  );
}

/** Lye: what it is, how pure, whether the titrant was made of it, and the base charge. */
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { chosenLots } from "../mix";
import { Charge } from "./charge";
import { Choose, Figure, useDesk, Words } from "./desk";

function AboutTitrant() {
  const { view } = useDesk();
  const { titrantLye } = view.draft.picked;
  const chosen = chosenLots(view.draft, view.recorded);
  const asIfPure = chosen.some((lot) => lot?.isAsIfPure);
  if (titrantLye === "same") {
    return (
      <Say tone="know">
        With the same lye the assay cancels for the acid part only: what was used in the burette is
        what the vessel needs. The base charge still stands on the assay.
        {asIfPure ? " The titration took the lye as pure; its acid is put right here." : ""}
      </Say>
    );
  }
  return asIfPure ? (
    <Say tone="check">
      A lot was titrated with lye of unknown assay, taken as pure: its acid value is an upper bound.
      If that was this lye, say so above.
    </Say>
  ) : null;
}

export function LyeStep() {
  const { view } = useDesk();
  const { picked } = view.draft;
  return (
    <>
      <Choose field="base" />
      <div className="side-by-side">
        <Words field="lyeLot" />
        <Figure field="assay" />
      </div>
      {picked.base.endsWith("CH3") ? (
        <Say tone="know">
          Under 50 % a methoxide is a solution: the rest of it is counted as methanol, and so much
          less is added.
        </Say>
      ) : null}
      <Choose field="titrantLye" />
      <Spoken>
        <AboutTitrant />
      </Spoken>
      <h3>For the reaction</h3>
      <Charge />
    </>
  );
}

/** Lye: what it is, how pure, whether the titrant was made of it, and the base charge. */
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { chosenLots } from "../mix";
import { Charge } from "./charge";
import { Choose, Figure, useDesk, Words } from "./desk";
import { LyeLots } from "./lye-lots";

function AboutTitrant() {
  const { view } = useDesk();
  const { titrantLye } = view.draft.picked;
  const chosen = chosenLots(view.draft, view.recorded);
  const asIfPure = chosen.some((lot) => lot?.isAsIfPure);
  if (titrantLye === "same") {
    return (
      <Say tone="know">
        One lye in burette and vessel: its assay matters for the base charge, not for the acid.
        {asIfPure ? " The titration took the lye as pure; its acid is put right here." : ""}
      </Say>
    );
  }
  return asIfPure ? (
    <Say tone="check">
      A titrant was taken as pure: the acid is this much at most. Was it this lye? Say so above.
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
      <LyeLots />
      {picked.base.endsWith("CH3") ? (
        <Say tone="know">
          Under 50 % it is a solution: the rest is methanol, and so much less is added.
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

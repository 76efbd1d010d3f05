/** Lye: what it is, how pure, whether the titrant was made of it, and the base charge. */
import type { Host } from "../../../sheet/port";
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { saidOfTitrant } from "../same-lye";
import { Charge } from "./charge";
import { Choose, Figure, useDesk, Words } from "./desk";
import { KeepLyeLot } from "./keep-lye-lot";
import { LyeLots } from "./lye-lots";

function AboutTitrant() {
  const { view } = useDesk();
  const said = saidOfTitrant(view.draft, view.recorded);
  return said === undefined ? null : <Say tone={said.tone}>{said.words}</Say>;
}

export function LyeStep({ host, today }: { host: Host; today: string }) {
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
      <KeepLyeLot host={host} today={today} />
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

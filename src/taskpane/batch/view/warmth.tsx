/** How warm the methanol gets as the lye dissolves in it, from one's own small trial. */
import { startBelow, temperatureRise } from "../../../core/batch/mixing";
import { isProblem } from "../../../core/problem/problem";
import { as } from "../../../core/quantity/quantity";
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { Figure, useDesk, useMark } from "./desk";

const millilitres = 1000;

function Said() {
  const { view } = useDesk();
  const inMark = useMark();
  const { batch } = view.working;
  const lye = view.figures.in("g", "trialLye");
  const methanol = view.figures.in("mL", "trialMethanol");
  const rise = view.figures.in("C", "trialRise");
  if (!batch || isProblem(batch) || !lye || !methanol || !rise) return null;
  const trial = { lye, methanol: as("L", methanol.div(millilitres)), rise };
  const found = temperatureRise(batch.catalyst, batch.methanolToAdd, trial);
  return <Say tone="safety">{inMark(startBelow(found))}</Say>;
}

export function Warmth() {
  const { base } = useDesk().view.working;
  // it is bought dissolved, or heats itself in air: no trial of this kind
  if (base.isMethoxide) return null;
  return (
    <details className="more">
      <summary>How warm will the methoxide get?</summary>
      <p>
        Dissolve a little lye in cold methanol and note how much it warms. A vessel gets warmer.
      </p>
      <Figure field="trialLye" />
      <Figure field="trialMethanol" />
      <Figure field="trialRise" />
      <Spoken>
        <Said />
      </Spoken>
    </details>
  );
}

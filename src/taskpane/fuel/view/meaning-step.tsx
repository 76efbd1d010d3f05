/** What the figures mean together: what to do, in the order in which it is done. */
import { isWell, notMeasured, toDo } from "../../../core/fuel/meaning";
import { Say } from "../../widgets/say";
import type { StepId } from "../fuel";
import { useDesk, useMark, Wants } from "./desk";

export function MeaningStep({ onGo }: { onGo: (step: StepId) => void }) {
  const { view } = useDesk();
  const inMark = useMark();
  const { found } = view.working;
  const acts = toDo(found);
  const lacking = notMeasured(found);
  const open = view.wants.filter(({ step }) => step !== "record");
  return (
    <>
      {open.length > 0 ? <Wants title="Still wanted" wants={open} onGo={onGo} /> : null}
      {isWell(found) ? <Say tone="know">Nothing that was measured stands against it.</Say> : null}
      {acts.length === 0 ? null : (
        <ol className="fuel-acts">
          {acts.map(({ what, why }) => (
            <li key={what}>
              <strong>{inMark(what)}</strong> {inMark(why)}
            </li>
          ))}
        </ol>
      )}
      {lacking.length === 0 ? null : <Say tone="check">Not judged: {lacking.join(", ")}.</Say>}
      <p className="soft">
        Figures of your own are no certificate. The rules where you are say what may be burned or
        sold.
      </p>
    </>
  );
}

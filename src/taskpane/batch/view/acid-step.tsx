/**
 * The acid step, when the route asks for one: what it takes, and what comes after it. Where it comes
 * first, its cautions are those of the step.
 */
import { caution } from "../../../core/batch/cautions";
import { afterPretreatment } from "../../../core/batch/pretreatment";
import { sources } from "../../../core/reference/sources";
import { Say } from "../../widgets/say";
import { acidStepLines } from "../weigh-out";
import { Figure, useDesk } from "./desk";
import { Lines } from "./lines";

export function AcidStep() {
  const { view } = useDesk();
  const { acidStep } = view.working;
  if (acidStep === undefined) return null;
  return (
    <details className="more" open={acidStep.advised === "first"}>
      <summary>
        {acidStep.advised === "first" ? "Acid step before the batch" : "An acid step, if you can"}
      </summary>
      <Figure field="acidAssay" />
      <Lines lines={acidStepLines(view)} />
      <p className="soft">
        2.25 g of methanol and 0.05 g of sulfuric acid for each gram of free fatty acid:{" "}
        {sources.canakci}.
      </p>
      <Say tone="check">{afterPretreatment}</Say>
      {acidStep.advised === "first" ? null : <Say tone="safety">{caution("sulfuricAcid")}</Say>}
    </details>
  );
}

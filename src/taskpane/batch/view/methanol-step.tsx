/** Methanol: by moles or by volume; and how much acid a base batch is allowed. */
import { isProblem } from "../../../core/problem/problem";
import { Say } from "../../widgets/say";
import { fixed } from "../../widgets/shown-number";
import { Spoken } from "../../widgets/spoken";
import { Choose, Figure, useDesk, useMark } from "./desk";
import { Limit } from "./limit";

function AsRatio() {
  const { view } = useDesk();
  const inMark = useMark();
  const { ratio } = view.working;
  if (view.draft.picked.methanolBy === "ratio" || ratio === undefined || isProblem(ratio)) {
    return null;
  }
  return (
    <Say tone="know">{inMark(`That is ${fixed(ratio, 2)} moles to one of triglyceride.`)}</Say>
  );
}

export function MethanolStep() {
  const { view } = useDesk();
  const { methanolBy } = view.draft.picked;
  return (
    <>
      <Choose field="methanolBy" />
      <Figure field={methanolBy === "ratio" ? "ratio" : "volumePercent"} />
      <Spoken>
        <AsRatio />
      </Spoken>
      <h3>How much acid is allowed</h3>
      <Limit />
    </>
  );
}

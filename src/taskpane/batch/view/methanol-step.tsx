/** Methanol: by moles or by volume; and how much acid a base batch is allowed. */
import { methanolPercent } from "../../../core/batch/conversions";
import { isProblem } from "../../../core/problem/problem";
import { Say } from "../../widgets/say";
import { fixed } from "../../widgets/shown-number";
import { Spoken } from "../../widgets/spoken";
import { Choose, Figure, useDesk, useMark } from "./desk";
import { Limit } from "./limit";

/** The other way round: litres of a ratio, the ratio of litres. */
function OtherWay() {
  const { view } = useDesk();
  const inMark = useMark();
  const { ratio, oil } = view.working;
  if (ratio === undefined || isProblem(ratio)) return null;
  if (view.draft.picked.methanolBy !== "ratio")
    return <Say tone="know">{inMark(`That is ${fixed(ratio, 2)} moles to 1 of oil.`)}</Say>;
  const litres = methanolPercent(ratio, oil);
  return isProblem(litres) ? null : (
    <Say tone="know">{inMark(`That is about ${fixed(litres, 0)} L for 100 L of oil.`)}</Say>
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
        <OtherWay />
      </Spoken>
      <h3>How much acid is allowed</h3>
      <Limit />
    </>
  );
}

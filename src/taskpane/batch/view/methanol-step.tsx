/** Methanol: by moles or by volume; and how much acid a base batch is allowed. */
import { isProblem } from "../../../core/problem/problem";
import { Choice } from "../../widgets/choice";
import { Say } from "../../widgets/say";
import { fixed } from "../../widgets/shown-number";
import { Spoken } from "../../widgets/spoken";
import { Figure, useDesk, useMark } from "./desk";
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
  const { view, act } = useDesk();
  const { methanolBy } = view.draft.picked;
  return (
    <>
      <Choice
        label="Methanol is given as"
        value={methanolBy}
        options={[
          ["ratio", "Molar ratio"],
          ["volume", "% by volume"],
        ]}
        onPick={(by) => {
          act({ do: "pick", picked: { methanolBy: by } });
        }}
      />
      <Figure field={methanolBy === "ratio" ? "ratio" : "volumePercent"} />
      <Spoken>
        <AsRatio />
      </Spoken>
      <h3>How much acid is allowed</h3>
      <Limit />
    </>
  );
}

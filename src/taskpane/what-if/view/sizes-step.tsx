/** Sizes: how large the batches are, in which unit, and of what oil. */
import { shown } from "../../../core/exact/rounding";
import { unitNames } from "../../fields/units";
import { capital } from "../../widgets/shown-number";
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { sizesOf } from "../sizes";
import { oilCold, oilTrouble } from "../working";
import { Choose, Figure, useDesk, useMark } from "./desk";
import { Figures } from "./figures-field";

/** The sizes that steps make, so that nobody has to count. */
function Stepped() {
  const { view } = useDesk();
  const inMark = useMark();
  const found = sizesOf("steps", view.figures);
  const last = found.kind === "sizes" ? found.values.at(-1) : undefined;
  const unit = unitNames[view.draft.picked.unit];
  return (
    <>
      <div className="side-by-side">
        <Figure field="from" />
        <Figure field="to" />
        <Figure field="step" />
      </div>
      <Spoken>
        {found.kind === "wrong" ? <Say tone="check">{inMark(found.sentence)}</Say> : null}
        {found.kind === "sizes" && last ? (
          <Say tone="know">
            {inMark(
              found.values.length === 1
                ? `One size: ${shown(last)} ${unit}.`
                : `${String(found.values.length)} sizes, the last ${shown(last)} ${unit}.`,
            )}
          </Say>
        ) : null}
      </Spoken>
    </>
  );
}

export function SizesStep() {
  const { view } = useDesk();
  const inMark = useMark();
  const { picked } = view.draft;
  const trouble = oilTrouble(view);
  const cold = oilCold(view);
  return (
    <>
      <Choose field="unit" />
      <Choose field="sizesBy" />
      {picked.sizesBy === "list" ? <Figures list="sizes" /> : <Stepped />}
      <Choose field="oil" />
      <div className="side-by-side">
        {picked.oil === "" ? <Figure field="density" /> : null}
        <Figure field="temperature" />
      </div>
      <Spoken>
        {trouble === undefined ? null : <Say tone="check">{inMark(capital(trouble))}</Say>}
        {cold === undefined ? null : <Say tone="check">{inMark(cold)}</Say>}
      </Spoken>
    </>
  );
}

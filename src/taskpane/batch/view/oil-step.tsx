/** Oil: which lots, in which shares, how much, and how warm when it was measured. */
import { Say } from "../../widgets/say";
import { Spoken } from "../../widgets/spoken";
import { halfSolidWords } from "../../../core/batch/half-solid";
import { mostWater } from "../../../core/batch/route";
import { isProblem } from "../../../core/problem/problem";
import { WaterWays } from "../../water/ways";
import { amount } from "../amount-text";
import { isVolume } from "../working";
import { Choose, Figure, useDesk, useMark, Words } from "./desk";
import { LotList } from "./lot-list";
import { Mixing } from "./mixing";

function Mass() {
  const { view } = useDesk();
  const { oilMass } = view.working;
  if (!isVolume(view.draft) || oilMass === undefined || isProblem(oilMass)) return null;
  return <Say tone="know">That is {amount(oilMass, view.mark)} kg of oil.</Say>;
}

function Cold() {
  const { view } = useDesk();
  const inMark = useMark();
  if (!isVolume(view.draft)) return null;
  const words = halfSolidWords(view.working.oil, view.figures.in("C", "temperature"));
  return words === undefined ? null : <Say tone="check">{inMark(words)}</Say>;
}

export function OilStep() {
  const { view } = useDesk();
  const inMark = useMark();
  return (
    <>
      <Words field="batch" />
      <LotList />
      <Mixing />
      <Figure field="amount" />
      <Choose field="unit" />
      {isVolume(view.draft) ? <Figure field="temperature" /> : null}
      <Spoken>
        <Mass />
        <Cold />
      </Spoken>
      <WaterWays
        by={view.draft.picked.waterBy}
        figures={view.figures}
        Choose={Choose}
        Figure={Figure}
        inMark={inMark}
        limit={mostWater}
      />
    </>
  );
}

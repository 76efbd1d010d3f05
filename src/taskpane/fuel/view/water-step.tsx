/** Water in the fuel, and the trial in methanol. */
import { fuelMost } from "../../../core/reference/fuel-limits";
import { methanolTrial } from "../../../core/batch/went";
import { Say } from "../../widgets/say";
import { WaterWays } from "../../water/ways";
import { Choose, Figure, useDesk, useMark } from "./desk";

export function WaterStep() {
  const { view } = useDesk();
  const inMark = useMark();
  const { trialFrom } = view.draft.words;
  return (
    <>
      <WaterWays
        by={view.draft.picked.waterBy}
        figures={view.figures}
        Choose={Choose}
        Figure={Figure}
        inMark={inMark}
        limit={fuelMost.water}
      />
      <p className="soft">{inMark("At most 0.05 % (500 mg/kg, EN 14214:2012+A1:2014).")}</p>
      <h3>{methanolTrial}</h3>
      <p>At 20 °C, shaken, left to stand. No measurement: common practice, no source.</p>
      <Choose field="trial" />
      {trialFrom === "" ? null : (
        <Say tone="know">{`${trialFrom} Another answer takes its place.`}</Say>
      )}
    </>
  );
}

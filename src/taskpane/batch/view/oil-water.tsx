/** The oil is too wet, or nobody knows: above what is weighed out, for that is lost on wet oil. */
import { waterOfOil } from "../../../core/batch/water-words";
import { Say } from "../../widgets/say";
import { useDesk, useMark } from "./desk";

function Words({ words }: { words: string | undefined }) {
  const inMark = useMark();
  return words === undefined ? null : <Say tone="check">{inMark(words)}</Say>;
}

export function OilWater() {
  const { view } = useDesk();
  return <Words words={waterOfOil(view.figures.value("water"))} />;
}

/** Said as soon as it is typed; that it is not measured is said at the weigh-out. */
export function WetOil() {
  const { view } = useDesk();
  const water = view.figures.value("water");
  return <Words words={water && waterOfOil(water)} />;
}

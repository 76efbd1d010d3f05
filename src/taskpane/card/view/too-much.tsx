/** Said above the steps: the batch does not fit into the vessel of My bench. */
import { useBench } from "../../bench/use-bench";
import { valuesIn } from "../../bench/use-first";
import { useLots } from "../../lots/use-lots";
import { Say } from "../../widgets/say";
import { tooMuchOf } from "../vessel";
import { useCard } from "./desk";

export function TooMuch() {
  const { host, batch, mark } = useCard();
  const bench = valuesIn(useBench(host)) ?? {};
  const { lots } = useLots(host);
  const words = tooMuchOf(batch, lots.state === "read" ? lots.lots : [], bench, mark);
  return words === undefined ? null : <Say tone="check">{words}</Say>;
}

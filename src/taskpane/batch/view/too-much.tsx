/** Said wherever a batch is weighed out or recorded: it does not fit into the vessel of My bench. */
import { Say } from "../../widgets/say";
import { tooMuchFor } from "../vessel";
import { useDesk } from "./desk";

export function TooMuch() {
  const { view, bench } = useDesk();
  const words = tooMuchFor(view, bench);
  return words === undefined ? null : <Say tone="check">{words}</Say>;
}

/** Said wherever a batch is weighed out or recorded: it does not fit the vessel, or the lots have not so much. */
import { Say } from "../../widgets/say";
import { lacksInStore } from "../left-in-store";
import { tooMuchFor } from "../vessel";
import { useDesk } from "./desk";

/** What the lots in hand have not left. */
export function TooLittle() {
  const { view, store } = useDesk();
  return lacksInStore(view, store).map((words) => (
    <Say key={words} tone="check">
      {words}
    </Say>
  ));
}

export function TooMuch() {
  const { view, bench } = useDesk();
  const words = tooMuchFor(view, bench);
  return (
    <>
      <TooLittle />
      {words === undefined ? null : <Say tone="check">{words}</Say>}
    </>
  );
}

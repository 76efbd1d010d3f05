/** How much oil, and how warm when it was measured. */
import { isVolume } from "../working";
import { Choose, Figure, useDesk } from "./desk";

export function HowMuch() {
  const { view } = useDesk();
  return (
    <>
      <Figure field="amount" />
      <Choose field="unit" />
      {isVolume(view.draft) ? <Figure field="temperature" /> : null}
    </>
  );
}

/** Room for what was really weighed or measured of an amount. */
import { NumberField } from "../../widgets/number-field";
import { Say } from "../../widgets/say";
import { type AmountShown, cardOf } from "../card";
import { heldOf } from "../draft";
import { farFrom, weighedBox, weighedKey } from "../fields";
import { othersOf, typedIn } from "../typed";
import { useCard } from "./desk";

export function Weighed({ amount }: { amount: AmountShown }) {
  const { batch, draft, act, mark, inMark } = useCard();
  const card = cardOf(batch);
  const box = weighedBox(amount);
  const { fact } = box;
  const { text, judged } = typedIn(heldOf(draft, card), box, mark);
  const doubt = judged.kind === "figure" ? farFrom(amount, judged.value) : undefined;
  return (
    <>
      <NumberField
        fact={fact.hint === undefined ? fact : { ...fact, hint: inMark(fact.hint) }}
        text={text}
        judged={judged}
        onText={(typed) => {
          act({
            do: "type",
            card,
            field: weighedKey(amount),
            text: typed,
            insteadOf: othersOf(box),
          });
        }}
      />
      {doubt === undefined ? null : <Say tone="check">{inMark(doubt)}</Say>}
    </>
  );
}

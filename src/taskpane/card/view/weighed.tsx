/** Room for what was really weighed or measured of an amount. */
import { NumberField } from "../../widgets/number-field";
import { Say } from "../../widgets/say";
import { type AmountShown, amountsOf, cardOf, unitsOf } from "../card";
import { weighedDoubt } from "../doubts";
import { heldOf } from "../draft";
import { weighedBox, weighedKey } from "../fields";
import { othersOf, typedIn } from "../typed";
import { useCard } from "./desk";

export function Weighed({ amount }: { amount: AmountShown }) {
  const { batch, draft, act, mark, inMark } = useCard();
  const card = cardOf(batch);
  const box = weighedBox(amount);
  const { fact } = box;
  const held = heldOf(draft, card);
  const { text, judged } = typedIn(held, box, mark);
  const all = amountsOf(batch, unitsOf(batch, draft.units)) ?? [];
  const doubt = weighedDoubt(amount, batch, all, held, mark);
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

/** Room for what was really weighed or measured of an amount. */
import { NumberField } from "../../widgets/number-field";
import { judge } from "../../widgets/judged";
import { type AmountShown, cardOf } from "../card";
import { heldOf } from "../draft";
import { weighedField, weighedKey } from "../fields";
import { useCard } from "./desk";

export function Weighed({ amount }: { amount: AmountShown }) {
  const { batch, draft, act, mark } = useCard();
  const card = cardOf(batch);
  const fact = weighedField(amount);
  const text = heldOf(draft, card).typed[weighedKey(amount)] ?? "";
  return (
    <NumberField
      fact={fact}
      text={text}
      judged={judge(text, fact, mark)}
      onText={(typed) => {
        act({ do: "type", card, field: weighedKey(amount), text: typed });
      }}
    />
  );
}

/** Room for what was really weighed or measured of an amount. */
import { NumberField } from "../../widgets/number-field";
import { judge } from "../../widgets/judged";
import { Say } from "../../widgets/say";
import { type AmountShown, cardOf } from "../card";
import { heldOf } from "../draft";
import { farFrom, weighedField, weighedKey } from "../fields";
import { useCard } from "./desk";

export function Weighed({ amount }: { amount: AmountShown }) {
  const { batch, draft, act, mark, inMark } = useCard();
  const card = cardOf(batch);
  const fact = weighedField(amount);
  const text = heldOf(draft, card).typed[weighedKey(amount)] ?? "";
  const judged = judge(text, fact, mark);
  const doubt = judged.kind === "figure" ? farFrom(amount, judged.value) : undefined;
  return (
    <>
      <NumberField
        fact={fact.hint === undefined ? fact : { ...fact, hint: inMark(fact.hint) }}
        text={text}
        judged={judged}
        onText={(typed) => {
          act({ do: "type", card, field: weighedKey(amount), text: typed });
        }}
      />
      {doubt === undefined ? null : <Say tone="check">{inMark(doubt)}</Say>}
    </>
  );
}

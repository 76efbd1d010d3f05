/** The steps in their order, each with a box to tick; amounts in large, with room for what was weighed. */
import { Checkbox } from "@fluentui/react-components";
import { cardSteps, type CardStep } from "../../../core/card/steps";
import { Together } from "../../widgets/together";
import { type AmountShown, cardOf } from "../card";
import { heldOf } from "../draft";
import { useCard } from "./desk";
import { Weighed } from "./weighed";

function Amount({ amount }: { amount: AmountShown }) {
  const { inMark } = useCard();
  return (
    <div className="card-amount">
      <p>
        <span className="card-what">{amount.what}</span>
        <strong>{inMark(amount.figure)}</strong>
        {amount.also.length === 0 ? null : (
          <span className="soft card-also">{inMark(amount.also.join(", "))}</span>
        )}
      </p>
      <Weighed amount={amount} />
    </div>
  );
}

function Step({
  step,
  at,
  amounts,
}: {
  step: CardStep;
  at: number;
  amounts: readonly AmountShown[];
}) {
  const { batch, draft, act } = useCard();
  const card = cardOf(batch);
  const isDone = heldOf(draft, card).ticks.includes(step.id);
  return (
    <li className={isDone ? "is-done" : undefined}>
      <Checkbox
        size="large"
        checked={isDone}
        label={{ children: `${String(at + 1)}. ${step.words}` }}
        onChange={(_, { checked }) => {
          act({ do: "tick", card, step: step.id, isDone: checked === true });
        }}
      />
      {step.when === "" ? null : (
        <p className="card-when">
          <Together>{step.when}</Together>
        </p>
      )}
      {amounts.map((amount) => (
        <Amount key={amount.id} amount={amount} />
      ))}
      <p className="card-caution">
        <span aria-hidden="true">! </span>
        <Together>{step.caution}</Together>
      </p>
    </li>
  );
}

export function Steps({ amounts }: { amounts: readonly AmountShown[] }) {
  return (
    <ol className="card-steps">
      {cardSteps.map((step, at) => (
        <Step
          key={step.id}
          step={step}
          at={at}
          amounts={amounts.filter(({ weighs }) => weighs === step.weighs)}
        />
      ))}
    </ol>
  );
}

/** The card itself: amounts, steps in their order, what to do when it goes wrong. */
import { aboutCautions, brief } from "../../../core/batch/cautions";
import { cardTroubles } from "../../../core/card/steps";
import { type CardUnits, cardUnits } from "../../../core/card/units";
import { OnRequest } from "../../planned/on-request";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { Together } from "../../widgets/together";
import { ToTask } from "../../to-task";
import { amountsOf, cardOf, nameOf, unitsOf } from "../card";
import { noDoseWords } from "../no-dose";
import { heldOf } from "../draft";
import { madeUnit } from "../fields";
import { headOf } from "../head";
import { PrintCard } from "./print-card";
import { Steps } from "./steps";
import { Went } from "./went";
import { TooMuch } from "./too-much";
import { WaterOfOil } from "./water";
import { useCard } from "./desk";

const unitWords: Readonly<Record<CardUnits, string>> = {
  metric: "Metric: litres, kilograms, grams",
  us: "US: gallons, pounds, ounces",
  "us, grams": "US: gallons, kilograms, grams",
  imperial: "Imperial: gallons, pounds, ounces",
  "imperial, grams": "Imperial: gallons, kilograms, grams",
};

function Units() {
  const { batch, draft, act } = useCard();
  return (
    <PickList
      label="Units"
      value={unitsOf(batch, draft.units)}
      options={cardUnits.map((each) => [each, unitWords[each]] as const)}
      onPick={(units) => {
        act({ do: "units", units });
      }}
    />
  );
}

function WhenItGoesWrong() {
  return (
    <section aria-labelledby="goes-wrong">
      <h3 id="goes-wrong">When it goes wrong</h3>
      <dl className="troubles">
        {cardTroubles.map(({ seen, act }) => (
          <div key={seen}>
            <dt>{seen}</dt>
            <dd>
              <Together>{act}</Together>
            </dd>
          </div>
        ))}
      </dl>
      <p className="soft">{aboutCautions}</p>
    </section>
  );
}

export function Card() {
  const { batch, draft, inMark } = useCard();
  const amounts = amountsOf(batch, unitsOf(batch, draft.units));
  if (amounts === undefined) {
    return <Say tone="check">{inMark(noDoseWords(batch))}</Say>;
  }
  const [whose, ...more] = headOf(batch);
  return (
    <>
      <p className="card-of">
        <strong>{whose}</strong>
        {more.map((line) => (
          <span key={line}>{inMark(line)}</span>
        ))}
      </p>
      <TooMuch />
      <WaterOfOil />
      <Units />
      <OnRequest words="Make a sheet to print" closeWords="Not now">
        {() => <PrintCard amounts={amounts} />}
      </OnRequest>
      <p>{brief("permission")} Tick each step once it is done.</p>
      <Steps amounts={amounts} />
      <WhenItGoesWrong />
      <Went amounts={amounts} />
      <ToTask
        task="fuel"
        about={nameOf(batch)}
        given={{
          base: batch.base,
          trial: heldOf(draft, cardOf(batch)).typed.trial ?? "",
          madeIn: madeUnit(unitsOf(batch, draft.units)),
        }}
        words="Test its fuel"
      />
    </>
  );
}

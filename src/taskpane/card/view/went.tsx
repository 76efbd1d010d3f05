/** How it went: asked after the batch, into the batch's own row. */
import { methanolTrial, type TrialAnswer, trialAnswers, trialMix } from "../../../core/batch/went";
import { andList } from "../../../sheet/and-list";
import { planWent, recordWent } from "../../../workbook/planning/record/record-went";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { Choice } from "../../widgets/choice";
import { judge, type NumberFieldFact } from "../../widgets/judged";
import { NumberField } from "../../widgets/number-field";
import { Say } from "../../widgets/say";
import { WordField } from "../../widgets/word-field";
import { type AmountShown, cardOf, unitsOf } from "../card";
import { madeDoubt, trialDoubt } from "../doubts";
import { heldOf } from "../draft";
import { madeBox, madeKey, minutesField, washesField } from "../fields";
import { othersOf, typedIn } from "../typed";
import { keysOf, wentOf, wrongIn } from "../went-of";
import { useCard } from "./desk";

const trials = trialAnswers.map((word) => [word, word] as const);

const wrongWords = (labels: readonly string[]): string =>
  `Nothing is recorded yet: first put right ${andList(labels)}.`;

function Doubt({ words }: { words: string | undefined }) {
  const { inMark } = useCard();
  return words === undefined ? null : <Say tone="check">{inMark(words)}</Say>;
}

export function Went({ amounts }: { amounts: readonly AmountShown[] }) {
  const { host, batch, draft, act, mark, inMark } = useCard();
  const card = cardOf(batch);
  const held = heldOf(draft, card);
  const set = (field: string, text: string): void => {
    act({ do: "type", card, field, text });
  };
  const units = unitsOf(batch, draft.units);
  const box = madeBox(units);
  const made = typedIn(held, box, mark);
  const wrong = wrongIn(amounts, held, units, mark);
  const record = wentOf(batch, amounts, held, units, mark);
  const toWrite = () => {
    if (record === undefined) throw new Error("how it went before anything is typed");
    return record;
  };
  const planned = usePlanned({
    key: record && JSON.stringify(record),
    plan: () => planWent(host, toWrite()),
    write: (confirmed, pause) => recordWent(host, toWrite(), confirmed, pause),
  });
  const field = (id: string, fact: NumberFieldFact) => (
    <NumberField
      fact={fact}
      text={held.typed[id] ?? ""}
      judged={judge(held.typed[id] ?? "", fact, mark)}
      onText={(text) => {
        set(id, text);
      }}
    />
  );
  return (
    <section aria-labelledby="it-went">
      <h3 id="it-went">How it went</h3>
      <NumberField
        fact={box.fact}
        text={made.text}
        judged={made.judged}
        onText={(text) => {
          act({ do: "type", card, field: madeKey(units), text, insteadOf: othersOf(box) });
        }}
      />
      <Doubt words={madeDoubt(units, batch, amounts, held, mark)} />
      {field("minutes", minutesField)}
      {field("washes", washesField)}
      <Choice
        label={`${methanolTrial}: ${trialMix}`}
        value={(held.typed.trial ?? "") as TrialAnswer | ""}
        options={trials}
        onPick={(word) => {
          set("trial", word);
        }}
      />
      <Doubt words={trialDoubt(held.typed.trial)} />
      <WordField
        label="What was seen"
        value={held.typed.seen ?? ""}
        onText={(text) => {
          set("seen", text);
        }}
      />
      <Doubt words={wrong.length > 0 ? wrongWords(wrong) : undefined} />
      {record === undefined ? null : (
        <PlannedChange
          planned={planned}
          command="Record how it went"
          busyWords="Writing the row."
          inMark={inMark}
          undoTakes="takes it back"
          onKeep={(id) => {
            for (const key of keysOf(id, amounts, units)) set(key, "");
          }}
        />
      )}
    </section>
  );
}

/** Titrant: what is in the burette, how strong, how that is known, and how finely it is read. */
import { Button } from "@fluentui/react-components";
import { useRef } from "react";
import { BasePick } from "../../fields/picks";
import { Choice } from "../../widgets/choice";
import { PickList } from "../../widgets/pick-list";
import { WordField } from "../../widgets/word-field";
import { ways } from "../names";
import { aboutTitrant, tenthMeans } from "../nudges/titrant";
import { baseOf, isTenthAsked, needsAssay, strengthFields } from "../strength";
import { Figure, useDesk, useMark } from "./desk";
import { Nudges } from "./nudges";

/** A bare 0.1 is asked about, with what each answer holds. */
function WhichTenth({ onAnswered }: { onAnswered: () => void }) {
  const { view, act } = useDesk();
  const inMark = useMark();
  const means = tenthMeans(baseOf(view.draft));
  return (
    <div className="question" role="group" aria-labelledby="which-tenth">
      <p id="which-tenth">{inMark(`Which 0.1 is it? One is ${means.apart} times the other.`)}</p>
      {(["molarity", "percent"] as const).map((meant) => (
        <Button
          key={meant}
          size="large"
          onClick={() => {
            act({ do: "answer-tenth", meant });
            onAnswered();
          }}
        >
          {inMark(means[meant])}
        </Button>
      ))}
    </div>
  );
}

function Assay() {
  const { view, act } = useDesk();
  const { assay } = view.draft.picked;
  return (
    <>
      <Choice
        label="The assay is"
        value={assay}
        options={[
          ["known", "Known"],
          ["same-lye", "Same lye as the batch, assay unknown"],
        ]}
        onPick={(picked) => {
          act({ do: "pick", picked: { assay: picked } });
        }}
      />
      {assay === "known" ? <Figure field="assay" /> : null}
    </>
  );
}

export function TitrantStep() {
  const { view, act } = useDesk();
  const { picked, words } = view.draft;
  const strength = useRef<HTMLDivElement>(null);
  /** The question is gone: the focus goes to the figure it was about. */
  const answered = (): void => {
    requestAnimationFrame(() => {
      strength.current?.querySelector("input")?.focus();
    });
  };
  return (
    <>
      <BasePick
        value={picked.base}
        onPick={(base) => {
          act({ do: "pick", picked: { base } });
        }}
      />
      <PickList
        label="Its strength is known by"
        value={picked.way}
        options={ways}
        onPick={(way) => {
          act({ do: "pick", picked: { way } });
        }}
      />
      <div ref={strength} className="side-by-side">
        {strengthFields[picked.way].map((field) => (
          <Figure key={field} field={field} />
        ))}
        <Figure field="strengthPercent" />
      </div>
      {isTenthAsked(view.draft, view.figures) ? <WhichTenth onAnswered={answered} /> : null}
      {needsAssay(picked.way) ? <Assay /> : null}
      <WordField
        label="Made or checked on"
        type="date"
        value={words.checkedOn}
        onText={(checkedOn) => {
          act({ do: "write", words: { checkedOn } });
        }}
      />
      <Figure field="titreStep" />
      <Nudges nudges={aboutTitrant(view)} />
    </>
  );
}

/** Titrant: what is in the burette, how strong, how that is known, and how finely it is read. */
import { Button } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import type { Host } from "../../../sheet/port";
import { keptFrom, offersOf } from "../titrants/kept-titrants";
import { aboutTitrant, tenthMeans } from "../nudges/titrant";
import { baseOf, isTenthAsked, needsAssay, strengthFields } from "../strength";
import { useHistories } from "../titrants/use-histories";
import { Choose, Figure, useDesk, useMark, Words } from "./desk";
import { KeepTitrant } from "./keep-titrant";
import { KeptTitrants } from "./kept-titrants";
import { Nudges } from "./nudges";

/** A bare 0.1 is asked about, with what each answer holds. */
function WhichTenth({ onAnswered }: { onAnswered: () => void }) {
  const { view, act } = useDesk();
  const inMark = useMark();
  const means = tenthMeans(baseOf(view.draft));
  const question = useRef<HTMLDivElement>(null);
  // right under the box it is about, and in sight, while the hand goes on typing
  useEffect(() => {
    question.current?.scrollIntoView({ block: "nearest" });
  }, []);
  return (
    <div
      ref={question}
      className="question"
      role="group"
      aria-labelledby="which-tenth"
      tabIndex={-1}
      data-asked="first"
    >
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
  const { assay } = useDesk().view.draft.picked;
  return (
    <>
      <Choose field="assay" />
      {assay === "known" ? <Figure field="assay" /> : null}
    </>
  );
}

export function TitrantStep({ host }: { host: Host }) {
  const { view } = useDesk();
  const histories = useHistories(host);
  const { picked } = view.draft;
  const inMark = useMark();
  const offers = offersOf(histories, view.today);
  const from = keptFrom(offers, view.draft, inMark);
  const isAsked = isTenthAsked(view.draft, view.figures);
  const strength = useRef<HTMLDivElement>(null);
  /** The question is gone: the focus goes to the figure it was about. */
  const answered = (): void => {
    requestAnimationFrame(() => {
      strength.current?.querySelector("input")?.focus();
    });
  };
  return (
    <>
      <KeptTitrants offers={offers} />
      <Choose field="base" />
      <Choose field="way" />
      <div ref={strength} className="side-by-side">
        {strengthFields[picked.way].map((field) => (
          <Figure key={field} field={field} />
        ))}
        {isAsked ? null : <Figure field="strengthPercent" />}
      </div>
      {isAsked ? (
        <>
          <WhichTenth onAnswered={answered} />
          <Figure field="strengthPercent" />
        </>
      ) : null}
      {from === "" ? null : <p className="soft">{from}</p>}
      {needsAssay(picked.way) ? <Assay /> : null}
      <Words field="checkedOn" />
      <Words field="bottle" />
      <Figure field="titreStep" />
      <Figure field="burettePercent" />
      <Nudges nudges={aboutTitrant(view, histories)} />
      <KeepTitrant host={host} />
    </>
  );
}

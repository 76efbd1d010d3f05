/** Blank: titrated, or the solvent neutralised beforehand. One or the other. */
import { neutralisedWord } from "../../../core/titration/neutralised";
import { useState } from "react";
import { indicatorNamed, turnsInWords, whenDark } from "../../../core/reference/indicators";
import { Say } from "../../widgets/say";
import { aboutBlank } from "../nudges/readings";
import { blankTips } from "../tips";
import { Choose, useDesk, useMark } from "./desk";
import { EndPointTimer } from "./end-point-timer";
import { Nudges, Tips } from "./nudges";
import { ReadingEntry } from "./reading-entry";
import { Readings } from "./reading-list";
import { UndoLast } from "./undo-last";

function SetAside({ count }: { count: number }) {
  if (count === 0) return null;
  return (
    <Say tone="check">
      {count === 1 ? "The blank that was titrated does" : `The ${count} blanks titrated do`} not
      count now: a blank is taken off, or the solvent was neutralised, never both.
    </Say>
  );
}

/** The colour to stop at, and what changes with an indicator for dark oil. */
function Turns({ name }: { name: string }) {
  const inMark = useMark();
  const indicator = indicatorNamed(name);
  if (indicator === undefined) return null;
  return (
    <>
      <p className="soft">{inMark(turnsInWords(indicator))}</p>
      {indicator.isForDark
        ? whenDark.map((words) => (
            <Say key={words} tone="know">
              {inMark(words)}
            </Say>
          ))
        : null}
    </>
  );
}

export function BlankStep() {
  const { view, act } = useDesk();
  const [editing, setEditing] = useState<number | undefined>();
  const { picked, blanks, blanksOf } = view.draft;
  return (
    <>
      <Choose field="blank" />
      {picked.blank === neutralisedWord ? <SetAside count={blanks.length} /> : null}
      {picked.blank === "titrated" && blanksOf !== "" ? (
        <Say tone="know">{`Today's blank, titrated with lot ${blanksOf}.`}</Say>
      ) : null}
      {picked.blank !== neutralisedWord ? (
        <>
          <EndPointTimer key={blanks.length} />
          <ReadingEntry
            list="blanks"
            editing={editing}
            onEdited={() => {
              setEditing(undefined);
            }}
            onDone={() => {
              act({ do: "go", step: "replicates" });
            }}
          />
          <Readings
            list="blanks"
            omitting={undefined}
            onEdit={setEditing}
            onOmit={() => undefined}
          />
          <UndoLast
            list="blanks"
            onUndo={() => {
              setEditing(undefined);
            }}
          />
        </>
      ) : null}
      <Choose field="indicator" />
      <Turns name={picked.indicator} />
      <Nudges nudges={aboutBlank(view)} />
      <Tips tips={blankTips} />
    </>
  );
}

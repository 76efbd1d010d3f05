/** Replicates: one titre after another, judged as they come. */
import { useState } from "react";
import { isProblem } from "../../../core/problem/problem";
import type { Host } from "../../../sheet/port";
import { aboutTitres } from "../nudges/readings";
import { placesIn } from "../readings";
import { Say } from "../../widgets/say";
import { fixed } from "../../widgets/shown-number";
import { worthOf } from "../worth";
import { readingTips } from "../tips";
import { useDesk, useMark } from "./desk";
import { DivisionPlotView } from "./division-plot";
import { EndPointTimer } from "./end-point-timer";
import { Nudges, Tips } from "./nudges";
import { ProbeOfLot } from "./probe-of-lot";
import { ReadingEntry } from "./reading-entry";
import { Readings } from "./reading-list";
import { UndoLast } from "./undo-last";
import { UsualScatter } from "./usual-scatter";

/** Mean, range and verdict, said aloud when they change. */
function Verdict() {
  const { view } = useDesk();
  const inMark = useMark();
  const { judgement, acid } = view.working;
  /** Said below, with what to do: beside it nothing is to be used. */
  const isContradiction = isProblem(acid);
  const isUsable = !isContradiction && worthOf(view.working, view.draft).word !== "Not yet";
  const places = Math.max(0, ...view.draft.titres.map(({ used }) => placesIn(used)));
  return (
    <div className="verdict" role="status" aria-atomic="true">
      {judgement === undefined ? null : (
        <>
          <p className="verdict-figures">
            <span>
              <span className="soft">
                {isUsable ? "Mean" : "Mean of these: do not dose from it yet"}
              </span>{" "}
              <strong>{inMark(fixed(judgement.mean, places + 1))} mL</strong>
            </span>
            {judgement.scatter === undefined ? null : (
              <span>
                <span className="soft">Range</span>{" "}
                <strong>{inMark(fixed(judgement.scatter.range, places))} mL</strong>
              </span>
            )}
          </p>
          {isContradiction ? null : (
            <Say tone={judgement.agrees ? "know" : "check"}>{inMark(judgement.verdict)}</Say>
          )}
          <DivisionPlotView />
        </>
      )}
    </div>
  );
}

export function ReplicatesStep({ host }: { host: Host }) {
  const { view, act } = useDesk();
  const [editing, setEditing] = useState<number | undefined>();
  const [omitting, setOmitting] = useState<number | undefined>();
  const [putIn, setPutIn] = useState(0);
  return (
    <>
      <EndPointTimer key={view.draft.titres.length} />
      <ReadingEntry
        list="titres"
        editing={editing}
        putIn={putIn}
        onEdited={() => {
          setEditing(undefined);
        }}
        onDone={() => {
          act({ do: "go", step: "result" });
        }}
      />
      <ProbeOfLot
        host={host}
        onPutIn={() => {
          setEditing(undefined);
          setPutIn((times) => times + 1);
        }}
      />
      <Verdict />
      <UsualScatter />
      <Readings
        list="titres"
        omitting={omitting}
        onEdit={(index) => {
          setOmitting(undefined);
          setEditing(index);
        }}
        onOmit={setOmitting}
      />
      <UndoLast
        list="titres"
        onUndo={() => {
          setEditing(undefined);
          setOmitting(undefined);
        }}
      />
      <Nudges nudges={view.working.titres.length === 0 ? [] : aboutTitres(view)} />
      <Tips tips={readingTips(view.draft.picked.indicator)} />
    </>
  );
}

/**
 * The batch task: from recorded lots to a weigh-out and a row of Batches. What is typed is kept by the
 * browser; the workbook is written by Record alone.
 */
import "../widgets/widgets.css";
import "../task.css";
import "./batch.css";
import { Button } from "@fluentui/react-components";
import { useCallback, useRef } from "react";
import { batchFrom, lyeFrom, standingFrom } from "../bench/begin-from";
import { BenchSays } from "../bench/bench-says";
import { otherwise } from "../bench/otherwise";
import { batchSays } from "../bench/says";
import { ofBatch } from "../bench/to-bench";
import { batchGaps } from "../bench/gaps";
import { useBench } from "../bench/use-bench";
import { useGaps } from "../bench/use-gaps";
import { readsFahrenheit } from "../fields/fahrenheit";
import { useFirst, valuesIn } from "../bench/use-first";
import { type Keeping, useKeptDraft } from "../drafts/use-kept-draft";
import { BeginNext } from "../stepped/begin-next";
import { KeptTask } from "../stepped/kept-task";
import type { BenchValues } from "../../workbook/tables/bench";
import { useOpenedOnce, useOpening } from "../open-task";
import { machineClock, type TaskProps } from "../task-props";
import { useBatches } from "../card/use-batches";
import { Cautions } from "../widgets/cautions";
import { localDay, sheetDay } from "../widgets/day";
import { Say } from "../widgets/say";
import { decimalMarkOf, withMark } from "../widgets/typed-number";
import { batch, type StepId } from "./batch";
import { type Draft, newDraft } from "./draft";
import { lastUsed } from "./lye-lots";
import { useLyeLots } from "./use-lye-lots";
import { nextBatch, ofLot } from "./of-lot";
import { type Action, reduce } from "./reducer";
import { draftFrom } from "./stored";
import { type Lots, useLots } from "../lots/use-lots";
import { useStore } from "../lots/use-store";
import { DeskProvider } from "./view/desk";
import { LyeStep } from "./view/lye-step";
import { MethanolStep } from "./view/methanol-step";
import { OilStep } from "./view/oil-step";
import { RecordStep } from "./view/record-step";
import { WeighOutStep } from "./view/weigh-out-step";
import { mixedAcid } from "./mixed-acid";
import { viewOf } from "./view-of";
import { stateOf } from "./wants";
import { workOf } from "./work-in-hand";

export type BatchTaskProps = Pick<TaskProps, "host" | "memory" | "locale" | "clock">;

const keeping: Keeping<Draft, Action> = {
  task: "batch",
  from: draftFrom,
  reduce,
  isTyping: ({ do: what }) => what === "type" || what === "write" || what === "share",
};

function NoLots({ lots, onAgain }: { lots: Lots; onAgain: () => void }) {
  return (
    <div className="task">
      <h2>Batch</h2>
      <div role="status">
        {lots.state === "looking" ? <p>Looking for recorded lots.</p> : null}
        {lots.state === "refused" ? <Say tone="check">{lots.sentence}</Say> : null}
        {lots.state === "none" ? (
          <Say tone="know">No lot is recorded yet. Titrate one and record it first.</Say>
        ) : null}
      </div>
      {lots.state === "looking" ? null : (
        <Button size="large" className="wide" onClick={onAgain}>
          Look again
        </Button>
      )}
    </div>
  );
}

export function BatchTask({ host, memory, locale, clock = machineClock }: BatchTaskProps) {
  const today = localDay(clock());
  const { lots, again } = useLots(host, sheetDay(today));
  const { draft, act: change, replace, isUnkept, held } = useKeptDraft(memory, keeping);
  const mark = decimalMarkOf(locale);
  const lyeLots = useLyeLots(host);
  const store = useStore(host);
  const { found: made } = useBatches(host);
  const found = useBench(host);
  const bench = valuesIn(found) ?? {};
  const first = useCallback(
    (values: BenchValues) => reduce(newDraft(), batchFrom(values, mark)),
    [mark],
  );
  const isBegun = useFirst(found, draft, newDraft, first, replace);
  const filled = useGaps({
    task: batch,
    draft: isBegun ? draft : undefined,
    id: "",
    values: valuesIn(found),
    mark,
    of: batchGaps,
    act: change,
  });
  const opening = useOpening("batch");
  const isKnown = draft !== undefined && found.state !== "looking" && lots.state !== "looking";
  useOpenedOnce(opening, isKnown, ({ about, given }) => {
    const onRecord = lots.state === "read" ? lots.lots : [];
    replace((now) =>
      ofLot(now, about, bench, mark, given, now && mixedAcid(viewOf(now, mark, onRecord))),
    );
  });
  /** Somebody has begun the next batch: the focus is theirs, in the pane. */
  const byHand = useRef(false);
  if (draft === undefined || lots.state !== "read") {
    return <NoLots lots={lots.state === "read" ? { state: "looking" } : lots} onAgain={again} />;
  }
  const batches = made.state === "read" ? made.batches.rows : [];
  const act = (action: Action): void => {
    change(action);
    // another base takes its own assay and charge along
    if (action.do !== "pick" || action.picked.base === undefined) return;
    change(lyeFrom(bench, mark, action.picked.base));
    const last = lastUsed(batches, action.picked.base, bench, lyeLots);
    if (last === undefined) return;
    change({ do: "write", words: { lyeLot: last.lot } });
    change({ do: "type", field: "assay", text: withMark(last.assay, mark) });
  };
  const view = viewOf(draft, mark, lots.lots);
  const { step } = draft;
  const standing = standingFrom(bench, mark, draft.picked.base);
  const go = (to: StepId): void => {
    act({ do: "go", step: to });
  };
  const next = (): void => {
    byHand.current = true;
    replace((now) => nextBatch(now, bench, mark));
  };
  return (
    <DeskProvider
      value={{
        view,
        act,
        bench,
        lyeLots,
        store,
        batches,
        isFahrenheit: readsFahrenheit(draft.picked.unit),
      }}
    >
      <KeptTask<StepId>
        held={held}
        isUnkept={isUnkept}
        title={draft.words.batch.trim() || "Batch"}
        next={
          <BeginNext
            what="batch"
            isAtRisk={!draft.isRecorded && draft.lots.length > 0}
            onNew={next}
          />
        }
        label={batch.label}
        names={batch.steps}
        here={step}
        stateOf={(id) => stateOf(id, view, view.wants)}
        onGo={go}
        takesFocus={byHand.current}
        turn={opening?.turn}
        enterGoesOnAt={["oil", "lye", "methanol", "weigh-out"]}
        passedWhenDone={["oil", "lye", "methanol"]}
        parts={{
          oil: () => <OilStep />,
          lye: () => <LyeStep host={host} today={today} />,
          methanol: () => <MethanolStep />,
          "weigh-out": () => <WeighOutStep onGo={go} />,
          record: () => <RecordStep host={host} today={today} onGo={go} onNew={next} />,
        }}
        top={
          <BenchSays
            bench={bench}
            mark={mark}
            host={host}
            says={batchSays(view)}
            filled={filled}
            otherwise={otherwise(batch, draft, standing, mark)}
            now={ofBatch(view)}
            onUse={() => {
              act(standing);
            }}
            onChange={() => {
              go("lye");
            }}
          />
        }
        below={<Cautions work={workOf(step, view.working)} />}
      />
    </DeskProvider>
  );
}

/**
 * The what-if task: batch sizes against acid values, assays, charges or bases. What is typed is kept by
 * the browser; the workbook is written by the last step alone.
 */
import { NotSaved } from "../drafts/not-saved";
import "../widgets/widgets.css";
import "../task.css";
import "./what-if.css";
import { useCallback, useState } from "react";
import type { BenchValues } from "../../workbook/tables/bench";
import { standingOf, whatIfFrom } from "../bench/begin-from";
import { BenchSays } from "../bench/bench-says";
import { whatIfOtherwise } from "../bench/otherwise";
import { whatIfSays } from "../bench/says";
import { ofWhatIf } from "../bench/to-bench";
import { whatIfGaps } from "../bench/gaps";
import { useBench } from "../bench/use-bench";
import { useGaps } from "../bench/use-gaps";
import { readsFahrenheit } from "../fields/fahrenheit";
import { useFirst, valuesIn } from "../bench/use-first";
import { type Lots, useLots } from "../lots/use-lots";
import { HeldElsewhere } from "../drafts/held-elsewhere";
import { type Keeping, useKeptDraft } from "../drafts/use-kept-draft";
import { useOpenedOnce, useOpening } from "../open-task";
import type { StepState } from "../stepped/step-bar";
import { TaskShell } from "../stepped/task-shell";
import type { TaskProps } from "../task-props";
import { Cautions } from "../widgets/cautions";
import { decimalMarkOf } from "../widgets/typed-number";
import { type Draft, newDraft } from "./draft";
import { fromBatch } from "./from-batch";
import { mixInDoubt } from "./mix-in-doubt";
import { type Action, reduce } from "./reducer";
import { useBatchInHand } from "./use-batch-in-hand";
import { draftFrom } from "./stored";
import { CompareStep } from "./view/compare-step";
import { DeskProvider } from "./view/desk";
import { SizesStep } from "./view/sizes-step";
import { TableStep } from "./view/table-step";
import { WriteStep } from "./view/write-step";
import { textOf } from "./use-doses";
import { type StepId, whatIf } from "./what-if";
import { type View, viewOf } from "./view-of";

const none: View["lots"] = [];

/** Undefined until it is known which lots there are. */
function recorded(lots: Lots): View["lots"] {
  if (lots.state === "looking") return undefined;
  return lots.state === "read" ? lots.lots : none;
}

const notYet = { state: "looking" } as const;

const keeping: Keeping<Draft, Action> = {
  task: "what-if",
  from: draftFrom,
  reduce,
  isTyping: (action) => action.do === "type" || action.do === "list",
};

/** A step is done when nothing is wanted in it. The table is done when it can be shown. */
function stateOf(step: StepId, { working }: View, written: string): StepState {
  if (step === "write") {
    return working.question && textOf(working.question) === written ? "done" : "to do";
  }
  if (step === "table") return working.question ? "done" : "to do";
  return working.wants.some((want) => want.step === step) ? "to do" : "done";
}

export function WhatIfTask({ host, memory, locale }: TaskProps) {
  const { draft, act, replace, isUnkept, held } = useKeptDraft(memory, keeping);
  const mark = decimalMarkOf(locale);
  const { lots } = useLots(host);
  const opening = useOpening("what-if");
  const inHand = useBatchInHand(memory, opening?.turn);
  const onRecord = recorded(lots);
  const isKnown = inHand !== undefined && onRecord !== undefined;
  const begun = useCallback(
    (draft: Draft) => (inHand && onRecord ? fromBatch(draft, inHand.batch, onRecord, mark) : draft),
    [inHand, onRecord, mark],
  );
  const first = useCallback(
    (values: BenchValues) => begun(reduce(newDraft(), whatIfFrom(values, mark))),
    [begun, mark],
  );
  const bench = useBench(host);
  const isBegun = useFirst(isKnown ? bench : notYet, draft, newDraft, first, replace);
  const filled = useGaps({
    task: whatIf,
    draft: isBegun ? draft : undefined,
    id: "",
    values: isKnown ? valuesIn(bench) : undefined,
    mark,
    of: whatIfGaps,
    act,
  });
  useOpenedOnce(opening, draft !== undefined && isKnown && inHand.turn === opening?.turn, () => {
    replace((now) => ({ ...begun(now ?? newDraft()), step: "sizes" }));
  });
  /** The question whose table was written last. */
  const [written, setWritten] = useState("");
  if (draft === undefined)
    return (
      <p className="task" role="status">
        One moment.
      </p>
    );
  const view = viewOf(draft, mark, onRecord, mixInDoubt(inHand?.batch, onRecord, mark));
  const { step } = draft;
  const standing = standingOf(draft, valuesIn(bench) ?? {}, mark);
  const go = (to: StepId): void => {
    act({ do: "go", step: to });
  };
  return (
    <DeskProvider value={{ view, act, isFahrenheit: readsFahrenheit(draft.picked.unit) }}>
      <HeldElsewhere held={held}>
        <TaskShell<StepId>
          label={whatIf.label}
          names={whatIf.steps}
          here={step}
          stateOf={(id) => stateOf(id, view, written)}
          onGo={go}
          turn={opening?.turn}
          passedWhenDone={["compare"]}
          enterGoesOnAt={["sizes", "compare", "table"]}
          parts={{
            sizes: () => <SizesStep />,
            compare: () => <CompareStep />,
            table: () => <TableStep onGo={go} />,
            write: () => <WriteStep host={host} onGo={go} onWritten={setWritten} />,
          }}
          top={
            <>
              {isUnkept ? <NotSaved instead="it is gone when the pane closes." /> : null}
              <BenchSays
                bench={valuesIn(bench) ?? {}}
                mark={mark}
                host={host}
                says={whatIfSays(view, valuesIn(bench) ?? {})}
                filled={filled}
                otherwise={whatIfOtherwise(view, valuesIn(bench) ?? {})}
                now={ofWhatIf(view)}
                onUse={() => {
                  act(standing);
                }}
                onChange={() => {
                  go("compare");
                }}
              />
            </>
          }
          below={<Cautions work="planning" />}
        />
      </HeldElsewhere>
    </DeskProvider>
  );
}

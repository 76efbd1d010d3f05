/**
 * The fuel task: a finished batch looked at, from acid, soap and water to what they mean and a row of
 * `Fuel`. What is typed is kept by the browser; the workbook is written by Record alone.
 */
import { NotSaved, recordFirst } from "../drafts/not-saved";
import "../widgets/widgets.css";
import "../task.css";
import "./fuel.css";
import { Button } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import { useBatches } from "../card/use-batches";
import { HeldElsewhere } from "../drafts/held-elsewhere";
import { type Keeping, useKeptDraft } from "../drafts/use-kept-draft";
import { useOpening } from "../open-task";
import { TaskShell } from "../stepped/task-shell";
import { machineClock, type TaskProps } from "../task-props";
import { Cautions } from "../widgets/cautions";
import { localDay } from "../widgets/day";
import { decimalMarkOf } from "../widgets/typed-number";
import { type Action, type Draft, draftFrom, newDraft, reduce } from "./draft";
import { fuel, type StepId } from "./fuel";
import { AcidStep } from "./view/acid-step";
import { BatchStep } from "./view/batch-step";
import { DeskProvider } from "./view/desk";
import { MeaningStep } from "./view/meaning-step";
import { RecordStep } from "./view/record-step";
import { SoapStep } from "./view/soap-step";
import { WaterStep } from "./view/water-step";
import { viewOf } from "./view-of";
import { stateOf } from "./wants";

export type FuelTaskProps = Pick<TaskProps, "host" | "memory" | "locale" | "clock">;

const keeping: Keeping<Draft, Action> = {
  task: "fuel",
  from: draftFrom,
  reduce,
  isTyping: ({ do: what }) => what === "type" || what === "write",
};

export function FuelTask({ host, memory, locale, clock = machineClock }: FuelTaskProps) {
  const { found } = useBatches(host);
  const { draft, act, replace, isUnkept, held } = useKeptDraft(memory, keeping);
  const opening = useOpening("fuel");
  const isReady = draft !== undefined;
  useEffect(() => {
    if (opening && isReady) act({ do: "write", words: { batch: opening.about } });
  }, [opening, isReady, act]);
  /** Somebody has begun the next fuel: the focus is theirs, in the pane. */
  const byHand = useRef(false);
  if (draft === undefined) {
    return (
      <div className="task">
        <h2>Fuel</h2>
        <p role="status">One moment.</p>
      </div>
    );
  }
  const view = viewOf(draft, decimalMarkOf(locale), localDay(clock()));
  const go = (step: StepId): void => {
    act({ do: "go", step });
  };
  const next = (): void => {
    byHand.current = true;
    replace((now) => newDraft(now));
  };
  const batches = found.state === "read" ? found.batches : undefined;
  return (
    <DeskProvider value={{ view, act, batches }}>
      <HeldElsewhere held={held}>
        <TaskShell<StepId>
          label={fuel.label}
          names={fuel.steps}
          here={draft.step}
          stateOf={(step) => stateOf(step, view, view.wants)}
          onGo={go}
          takesFocus={byHand.current}
          enterGoesOnAt={["batch", "acid", "soap", "water", "meaning"]}
          parts={{
            batch: () => <BatchStep />,
            acid: () => <AcidStep />,
            soap: () => <SoapStep />,
            water: () => <WaterStep />,
            meaning: () => <MeaningStep onGo={go} />,
            record: () => <RecordStep host={host} onGo={go} onNew={next} />,
          }}
          top={
            <>
              {isUnkept ? <NotSaved instead={recordFirst} /> : null}
              <header className="task-top">
                <p className="task-of">{draft.words.batch.trim() || "Fuel"}</p>
                {draft.isRecorded ? <Button onClick={next}>New fuel</Button> : null}
              </header>
            </>
          }
          below={<Cautions work="testing fuel" />}
        />
      </HeldElsewhere>
    </DeskProvider>
  );
}

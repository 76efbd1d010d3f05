/** One titration: where one is, the step itself, and the way on. */
import { Button } from "@fluentui/react-components";
import type { Host } from "../../../sheet/port";
import { titrationFrom } from "../../bench/begin-from";
import { BenchSays } from "../../bench/bench-says";
import { otherwise } from "../../bench/otherwise";
import { titrationSays } from "../../bench/says";
import { ofTitration } from "../../bench/to-bench";
import { TaskShell } from "../../stepped/task-shell";
import { Cautions } from "../../widgets/cautions";
import type { Draft } from "../draft";
import { stateOf } from "../progress";
import { keptTitrations, type StepId, titration } from "../titration";
import { BlankStep } from "./blank-step";
import { useDesk } from "./desk";
import { OilStep } from "./oil-step";
import { RecordStep } from "./record-step";
import { ReplicatesStep } from "./replicates-step";
import { ResultStep } from "./result-step";
import { TitrantStep } from "./titrant-step";

export interface StepsProps {
  readonly host: Host;
  /** Opened by hand: then its heading takes the focus. */
  readonly takesFocus: boolean;
  readonly onLots: () => void;
  readonly onNew: () => void;
  readonly onRecorded: (draft: Draft) => void;
}

export function Steps({ host, takesFocus, onLots, onNew, onRecorded }: StepsProps) {
  const { view, act, bench, filled } = useDesk();
  const first = titrationFrom(bench, view.mark);
  const { step, words } = view.draft;
  const go = (to: StepId): void => {
    act({ do: "go", step: to });
  };
  return (
    <TaskShell<StepId>
      label={titration.label}
      names={titration.steps}
      look="titrate"
      here={step}
      stateOf={(id) => stateOf(id, view, view.wants)}
      onGo={go}
      takesFocus={takesFocus}
      enterGoesOnAt={["titrant", "oil"]}
      passedWhenDone={["titrant", "oil", "blank"]}
      parts={{
        titrant: () => <TitrantStep host={host} />,
        oil: () => <OilStep />,
        blank: () => <BlankStep />,
        replicates: () => <ReplicatesStep host={host} />,
        result: () => <ResultStep onGo={go} />,
        record: () => <RecordStep host={host} onGo={go} onRecorded={onRecorded} onNew={onNew} />,
      }}
      top={
        <>
          <header className="task-top">
            <p className="task-of">{words.lot.trim() || "New titration"}</p>
            <Button onClick={onLots}>{keptTitrations}</Button>
          </header>
          <BenchSays
            bench={bench}
            mark={view.mark}
            host={host}
            says={titrationSays(view)}
            filled={filled}
            otherwise={
              view.draft.picked.way === "molarity"
                ? otherwise(titration, view.draft, first, view.mark)
                : []
            }
            now={ofTitration(view)}
            onUse={() => {
              act(first);
            }}
            onChange={() => {
              go("titrant");
            }}
          />
        </>
      }
      below={<Cautions work={step === "titrant" ? "making titrant" : "titrating"} />}
    />
  );
}

/**
 * The titration task: from an empty burette to a row in the logbook. Drafts are kept by the browser;
 * the workbook is written by Record alone.
 */
import { NotSaved, recordFirst } from "../drafts/not-saved";
import "../widgets/widgets.css";
import "../task.css";
import "./titrate.css";
import "./timer.css";
import "./result.css";
import { Button } from "@fluentui/react-components";
import { useCallback } from "react";
import { titrationFrom } from "../bench/begin-from";
import { titrationGaps } from "../bench/gaps";
import { useBench } from "../bench/use-bench";
import { useGaps } from "../bench/use-gaps";
import { benchReadsFahrenheit } from "../fields/fahrenheit";
import { valuesIn } from "../bench/use-first";
import { HeldElsewhere } from "../drafts/held-elsewhere";
import { machineClock, type TaskProps } from "../task-props";
import { localDay } from "../widgets/day";
import { type DecimalMark, decimalMarkOf } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { figuresOf } from "./figures";
import { reduce } from "./reducer";
import { strengthOf } from "./strength";
import { useRecord } from "./usual/use-record";
import { titration } from "./titration";
import { useTitrations } from "./use-titrations";
import { DeskProvider } from "./view/desk";
import { Lots } from "./view/lots";
import { Steps } from "./view/steps";
import { viewOf } from "./view-of";

export type TitrateTaskProps = Pick<TaskProps, "host" | "drafts" | "locale" | "clock">;

/** Where My bench says all of the titrant, the lot is what is asked for first. */
const atOil = (draft: Draft, mark: DecimalMark): Draft => {
  const figures = figuresOf(draft, mark);
  const isKnown = strengthOf(draft, figures) !== undefined && figures.in("mL", "titreStep");
  return isKnown ? { ...draft, step: "oil" } : draft;
};

export function TitrateTask({ host, drafts, locale, clock = machineClock }: TitrateTaskProps) {
  const mark = decimalMarkOf(locale);
  const values = valuesIn(useBench(host));
  const first = useCallback(
    (fresh: Draft) => {
      if (values === undefined) return fresh;
      const begun = reduce(fresh, titrationFrom(values, mark));
      return values.molarity === undefined ? begun : atOil(begun, mark);
    },
    [values, mark],
  );
  const titrations = useTitrations(drafts, clock, first);
  const record = useRecord(host);
  const { bench, kept, takesFocus } = titrations;
  const filled = useGaps({
    task: titration,
    draft: titrations.isBegun ? bench?.draft : undefined,
    id: bench?.draft.id ?? "",
    values,
    mark,
    of: titrationGaps,
    act: titrations.act,
  });
  if (kept === undefined)
    return (
      <p className="task" role="status">
        Looking for lots under way.
      </p>
    );
  const unkept = titrations.isUnkept ? <NotSaved instead={recordFirst} /> : null;
  if (bench === undefined) {
    return (
      <>
        {unkept}
        <Lots
          kept={kept}
          locale={locale}
          takesFocus={takesFocus}
          onTakeUp={titrations.takeUp}
          onDiscard={titrations.discard}
          onNew={() => {
            titrations.begin(kept[0]?.draft, "bench first");
          }}
        />
      </>
    );
  }
  const view = viewOf(bench.draft, mark, localDay(clock()), record);
  return (
    <DeskProvider
      value={{
        view,
        act: titrations.act,
        bench: values ?? {},
        filled,
        isFahrenheit: benchReadsFahrenheit(values?.unit),
        undoes: bench.past.at(-1),
      }}
    >
      {unkept}
      <HeldElsewhere
        held={titrations.held}
        aside={
          <Button size="large" className="wide" onClick={titrations.putAway}>
            Other lots
          </Button>
        }
      >
        <Steps
          key={bench.draft.id}
          host={host}
          takesFocus={takesFocus}
          onRecorded={titrations.recorded}
          onLots={titrations.putAway}
          onNew={() => {
            titrations.begin(bench.draft, "next lot");
          }}
        />
      </HeldElsewhere>
    </DeskProvider>
  );
}

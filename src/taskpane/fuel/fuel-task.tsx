/**
 * The fuel task: a finished batch looked at, from acid, soap and water to what they mean and a row of
 * `Fuel`. What is typed is kept by the browser; the workbook is written by Record alone.
 */
import "../widgets/widgets.css";
import "../task.css";
import "./fuel.css";
import { type ReactNode, useCallback, useRef, useState } from "react";
import { baseNamed } from "../../core/reference/bases";
import type { BenchValues } from "../../workbook/tables/bench";
import { fuelFrom } from "../bench/begin-from";
import { BenchSays } from "../bench/bench-says";
import { otherwise } from "../bench/otherwise";
import { fuelSays } from "../bench/says";
import { ofFuel } from "../bench/to-bench";
import { useBench } from "../bench/use-bench";
import { useFirst, valuesIn } from "../bench/use-first";
import { nameOf } from "../card/card";
import { type Found, useBatches } from "../card/use-batches";
import { type Keeping, type KeptDraft, useKeptDraft } from "../drafts/use-kept-draft";
import { type Opening, useOpenedOnce, useOpening } from "../open-task";
import { BeginNext } from "../stepped/begin-next";
import { KeptTask } from "../stepped/kept-task";
import { machineClock, type TaskProps } from "../task-props";
import { Cautions } from "../widgets/cautions";
import { localDay } from "../widgets/day";
import { type DecimalMark, decimalMarkOf } from "../widgets/typed-number";
import { type Action, type Draft, draftFrom, isUnderWay, newDraft, reduce } from "./draft";
import { fuel, type StepId } from "./fuel";
import { asOnCard, isOther, ofRow, opened, withTrial } from "./of-batch";
import { AcidStep } from "./view/acid-step";
import { BatchStep } from "./view/batch-step";
import { DeskProvider } from "./view/desk";
import { MeaningStep } from "./view/meaning-step";
import { OtherUnderWay } from "./view/other-under-way";
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

const fresh = (): Draft => newDraft();
const isUntouched = (draft: Draft): boolean => JSON.stringify(draft) === JSON.stringify(fresh());

/** Opened from a batch: begun, or asked about first where another's fuel is under way. */
function useOpenedBatch(
  kept: KeptDraft<Draft, Action>,
  found: Found,
  first: (() => Draft) | undefined,
  mark: DecimalMark,
): { readonly turn: number | undefined; readonly question: ReactNode } {
  const { draft, replace } = kept;
  const opening = useOpening("fuel");
  const [asked, setAsked] = useState<Opening>();
  const [answered, setAnswered] = useState(0);
  const rows = found.state === "read" ? found.batches.rows : [];
  const begin = ({ about, given }: Opening): void => {
    const row = rows.find((each) => nameOf(each) === about);
    replace((now) => {
      const found = now === undefined || isUntouched(now) ? first?.() : now;
      const begun = found && asOnCard(found, about, given.madeIn);
      const told = ofRow(row, mark, begun?.picked.madeIn);
      const base = told.base ?? baseNamed(given.base ?? "")?.name;
      return opened(begun, about, withTrial({ ...told, base }, given.trial ?? "", about));
    });
  };
  const isKnown = draft !== undefined && first !== undefined && found.state !== "looking";
  useOpenedOnce(opening, isKnown, (now) => {
    if (draft !== undefined && isOther(draft, now.about)) setAsked(now);
    else begin(now);
  });
  const answer = (isWanted: boolean): void => {
    if (asked !== undefined && isWanted) begin(asked);
    setAsked(undefined);
    setAnswered((times) => times + 1);
  };
  return {
    // the focus comes in anew when it is opened, and when the question is answered
    turn: opening && opening.turn + answered,
    question:
      asked === undefined || draft === undefined ? null : (
        <OtherUnderWay
          here={draft.words.batch.trim()}
          wanted={asked.about}
          onKeep={() => {
            answer(false);
          }}
          onStart={() => {
            answer(true);
          }}
        />
      ),
  };
}

export function FuelTask({ host, memory, locale, clock = machineClock }: FuelTaskProps) {
  const { found } = useBatches(host);
  const kept = useKeptDraft(memory, keeping);
  const { draft, act, replace, isUnkept, held } = kept;
  const mark = decimalMarkOf(locale);
  const bench = useBench(host);
  const first = useCallback(
    (values: BenchValues) => reduce(newDraft(), fuelFrom(values, mark)),
    [mark],
  );
  useFirst(bench, draft, fresh, first, replace);
  const values = bench.state === "looking" ? undefined : (valuesIn(bench) ?? {});
  const { turn, question } = useOpenedBatch(kept, found, values && (() => first(values)), mark);
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
  const view = viewOf(draft, mark, localDay(clock()));
  const go = (step: StepId): void => {
    act({ do: "go", step });
  };
  const change = (how: (now: Draft) => Draft): void => {
    replace((now) => how(now ?? newDraft()));
  };
  const next = (): void => {
    byHand.current = true;
    change(newDraft);
  };
  const batches = found.state === "read" ? found.batches : undefined;
  // which base it was made with is the batch's to say, and what it is measured in is shown
  const standing = { ...fuelFrom(values ?? {}, mark), picked: {} };
  return (
    <DeskProvider value={{ view, act, change, batches }}>
      <KeptTask<StepId>
        held={held}
        isUnkept={isUnkept}
        title={draft.words.batch.trim() || "Fuel"}
        next={<BeginNext what="fuel" isAtRisk={isUnderWay(draft)} onNew={next} />}
        label={fuel.label}
        names={fuel.steps}
        here={draft.step}
        stateOf={(step) => stateOf(step, view, view.wants)}
        onGo={go}
        takesFocus={byHand.current}
        turn={turn}
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
            {question}
            <BenchSays
              bench={values ?? {}}
              mark={mark}
              host={host}
              says={fuelSays(view)}
              otherwise={otherwise(fuel, draft, standing, mark)}
              now={ofFuel(view)}
              onUse={() => {
                act(standing);
              }}
              onChange={() => {
                go("acid");
              }}
            />
          </>
        }
        below={<Cautions work="testing fuel" />}
      />
    </DeskProvider>
  );
}

/**
 * The titration task: from an empty burette to a row in the logbook. Drafts are kept by the browser;
 * the workbook is written by Record alone.
 */
import "../widgets/widgets.css";
import "../task.css";
import "./titrate.css";
import "./timer.css";
import "./result.css";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { keeper } from "./drafts/keeper";
import type { Kept } from "./drafts/store";
import { useLeaving } from "../drafts/use-leaving";
import type { TaskProps } from "../tasks";
import { Say } from "../widgets/say";
import { decimalMarkOf } from "../widgets/typed-number";
import { localDay } from "../widgets/day";
import { type Draft, newDraft } from "./draft";
import { outdated } from "./lots-kept";
import { type Bench, type BenchAction, benchWith, step } from "./undo";
import { DeskProvider } from "./view/desk";
import { Lots } from "./view/lots";
import { Steps } from "./view/steps";
import { viewOf } from "./view-of";

export type TitrateTaskProps = Pick<TaskProps, "host" | "drafts" | "locale" | "clock">;

const later = {
  after(milliseconds: number, run: () => void) {
    const timer = setTimeout(run, milliseconds);
    return () => {
      clearTimeout(timer);
    };
  },
};

const machineClock = (): Date => new Date();

/** Was anything but the step changed since? */
const isAsRecorded = (now: Draft, then: Draft): boolean =>
  now.typed === then.typed &&
  now.picked === then.picked &&
  now.words === then.words &&
  now.titres === then.titres &&
  now.blanks === then.blanks;

/** Written at once; typing waits for its pause. */
const isTyping = (action: BenchAction): boolean =>
  action.do === "type" || action.do === "write" || action.do === "pick";

export function TitrateTask({ host, drafts, locale, clock = machineClock }: TitrateTaskProps) {
  const [bench, setBench] = useState<Bench | undefined>();
  const [kept, setKept] = useState<readonly Kept[] | undefined>();
  const [isUnkept, setUnkept] = useState(false);
  const latest = useRef<Bench | undefined>(undefined);
  /** Somebody has pressed something: the focus is theirs, in the pane. */
  const byHand = useRef(false);
  const touched = useRef(new Set<string>());
  const keeping = useMemo(() => keeper(drafts, later, setUnkept), [drafts]);
  const today = localDay(clock());

  const show = useCallback((next: Bench | undefined): void => {
    latest.current = next;
    setBench(next);
  }, []);

  const begin = useCallback(
    (after: Draft | undefined): void => {
      const id = `${clock().getTime()}-${Math.random().toString(36).slice(2)}`;
      show(benchWith(newDraft(id, localDay(clock()), after)));
    },
    [clock, show],
  );

  const list = useCallback(async (): Promise<readonly Kept[]> => {
    await keeping.now();
    try {
      const found = await drafts.all();
      setKept(found);
      return found;
    } catch {
      setUnkept(true);
      setKept([]);
      return [];
    }
  }, [drafts, keeping]);

  useEffect(() => {
    let isCurrent = true;
    void list().then((found) => {
      for (const { draft } of outdated(found)) void keeping.forget(draft.id);
      if (isCurrent && found.every(({ draft }) => draft.isRecorded)) begin(found[0]?.draft);
    });
    return () => {
      isCurrent = false;
    };
  }, [list, keeping, begin]);
  useLeaving(useCallback(() => void keeping.now(), [keeping]));

  const act = useCallback(
    (action: BenchAction): void => {
      if (latest.current === undefined) return;
      const next = step(latest.current, action);
      show(next);
      // a titration in which nothing was done yet is not worth keeping
      if (action.do !== "go") touched.current.add(next.draft.id);
      if (!touched.current.has(next.draft.id)) return;
      if (isTyping(action)) keeping.soon(next.draft);
      else void keeping.now(next.draft);
    },
    [keeping, show],
  );

  const recorded = useCallback(
    (draft: Draft): void => {
      const now = latest.current?.draft;
      if (now?.id === draft.id) {
        if (isAsRecorded(now, draft)) act({ do: "recorded" });
      } else void keeping.now({ ...draft, isRecorded: true });
    },
    [act, keeping],
  );

  if (kept === undefined)
    return (
      <p className="task" role="status">
        Looking for lots under way.
      </p>
    );
  const unkept = isUnkept ? (
    <Say tone="mind">
      This browser keeps nothing: record before you close the pane, or the readings are lost.
    </Say>
  ) : null;
  if (bench === undefined) {
    return (
      <>
        {unkept}
        <Lots
          kept={kept}
          locale={locale}
          takesFocus={byHand.current}
          onTakeUp={(draft) => {
            byHand.current = true;
            touched.current.add(draft.id);
            show(benchWith(draft));
          }}
          onDiscard={(draft) => {
            void keeping.forget(draft.id).then(list);
          }}
          onNew={() => {
            byHand.current = true;
            begin(kept[0]?.draft);
          }}
        />
      </>
    );
  }
  const view = viewOf(bench.draft, decimalMarkOf(locale), today);
  return (
    <DeskProvider value={{ view, act, undoes: bench.past.at(-1) }}>
      {unkept}
      <Steps
        key={bench.draft.id}
        host={host}
        takesFocus={byHand.current}
        onRecorded={recorded}
        onLots={() => {
          byHand.current = true;
          void list().then(() => {
            show(undefined);
          });
        }}
        onNew={() => {
          byHand.current = true;
          begin(bench.draft);
        }}
      />
    </DeskProvider>
  );
}

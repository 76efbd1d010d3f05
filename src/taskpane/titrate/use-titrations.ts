/** The titration at hand and the others that the browser keeps: begun, taken up, changed, put away. */
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { type Held, useHolding } from "../drafts/use-holding";
import { useLeaving } from "../drafts/use-leaving";
import { localDay } from "../widgets/day";
import { type Draft, newDraft, nextLot } from "./draft";
import { keeper } from "./drafts/keeper";
import type { DraftStore, Kept } from "./drafts/store";
import { outdated } from "./lots-kept";
import { type Bench, type BenchAction, benchWith, step } from "./undo";

const later = {
  after(milliseconds: number, run: () => void) {
    const timer = setTimeout(run, milliseconds);
    return () => {
      clearTimeout(timer);
    };
  },
};

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

type How = "bench first" | "next lot";

export interface Titrations {
  /** Undefined while none is at hand: the list is shown. */
  readonly bench: Bench | undefined;
  /** Undefined until it is known what was kept. */
  readonly kept: readonly Kept[] | undefined;
  /** This browser keeps nothing. */
  readonly isUnkept: boolean;
  /** Another tab may have the one at hand open too. */
  readonly held: Held;
  /** Somebody has pressed something: the focus is theirs, in the pane. */
  readonly takesFocus: boolean;
  /** Something was done in the one at hand, or it was taken up again. */
  readonly isBegun: boolean;
  readonly act: (action: BenchAction) => void;
  /** The draft is in the workbook, as it was when it was written. */
  readonly recorded: (draft: Draft) => void;
  readonly takeUp: (draft: Draft) => void;
  readonly discard: (draft: Draft) => void;
  /** A new one, with what stays from one to the next: of another day, or the next lot of this one. */
  readonly begin: (after: Draft | undefined, how: How) => void;
  readonly putAway: () => void;
}

/**
 * @param clock the same function at every call
 * @param first a fresh draft with what My bench says; another function when that says something else
 */
export function useTitrations(
  drafts: DraftStore,
  clock: () => Date,
  first: (fresh: Draft) => Draft,
): Titrations {
  const [bench, setBench] = useState<Bench | undefined>();
  const [kept, setKept] = useState<readonly Kept[] | undefined>();
  const [isUnkept, setUnkept] = useState(false);
  const latest = useRef<Bench | undefined>(undefined);
  const byHand = useRef(false);
  const touched = useRef(new Set<string>());
  const moved = useRef(new Set<string>());
  /** The one that was begun last and goes by My bench, as it was without it. */
  const fresh = useRef<Draft | undefined>(undefined);
  const firstNow = useRef(first);
  firstNow.current = first;
  const keeping = useMemo(() => keeper(drafts, later, setUnkept), [drafts]);

  const show = useCallback((next: Bench | undefined): void => {
    latest.current = next;
    setBench(next);
  }, []);

  const begin = useCallback(
    (after: Draft | undefined, how: How): void => {
      const id = `${clock().getTime()}-${Math.random().toString(36).slice(2)}`;
      const today = localDay(clock());
      // right after another its own titrant goes on; at the beginning of a day the bench is asked
      if (after !== undefined && how === "next lot") {
        fresh.current = undefined;
        show(benchWith(nextLot(id, today, after)));
        return;
      }
      const begun = newDraft(id, today, after);
      fresh.current = begun;
      show(benchWith(firstNow.current(begun)));
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
      if (isCurrent && found.every(({ draft }) => draft.isRecorded))
        begin(found[0]?.draft, "bench first");
    });
    return () => {
      isCurrent = false;
    };
  }, [list, keeping, begin]);
  useEffect(() => {
    const now = latest.current?.draft;
    if (now === undefined || now.id !== fresh.current?.id || touched.current.has(now.id)) return;
    const begun = first(fresh.current);
    // who has gone to another step stays there
    const isMoved = moved.current.has(now.id);
    const next = isMoved ? { ...begun, step: now.step } : begun;
    if (JSON.stringify(next) !== JSON.stringify(now)) show(benchWith(next));
  }, [first, show]);
  useLeaving(useCallback(() => void keeping.now(), [keeping]));
  const held = useHolding(
    bench && `titration/${bench.draft.id}`,
    () => keeping.now(),
    async () => {
      const id = latest.current?.draft.id;
      const found = (await drafts.all()).find(({ draft }) => draft.id === id);
      if (found && latest.current?.draft.id === id) show(benchWith(found.draft));
    },
  );
  const isWriter = useRef(true);
  isWriter.current = held.isWriter;

  const act = useCallback(
    (action: BenchAction): void => {
      if (latest.current === undefined || !isWriter.current) return;
      const next = step(latest.current, action);
      show(next);
      // a titration in which nothing was done yet is not worth keeping
      (action.do === "go" ? moved : touched).current.add(next.draft.id);
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

  return {
    bench,
    kept,
    isUnkept,
    held,
    takesFocus: byHand.current,
    isBegun: bench !== undefined && touched.current.has(bench.draft.id),
    act,
    recorded,
    takeUp(draft) {
      byHand.current = true;
      touched.current.add(draft.id);
      show(benchWith(draft));
    },
    discard(draft) {
      void keeping.forget(draft.id).then(list);
    },
    begin(after, how) {
      byHand.current = true;
      begin(after, how);
    },
    putAway() {
      byHand.current = true;
      void list().then(() => {
        show(undefined);
      });
    },
  };
}

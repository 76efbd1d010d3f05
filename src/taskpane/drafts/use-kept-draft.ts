/** The draft of a task, kept by the browser after each change, and taken up again. */
import { useCallback, useEffect, useRef, useState } from "react";
import type { TaskMemory } from "./task-memory";

/** Typing is written within this many milliseconds; leaving the page writes at once. */
const pause = 400;

export interface Keeping<Draft, Action> {
  /** Its name in the browser's storage. */
  readonly task: string;
  /** A draft out of storage, or a fresh one. */
  readonly from: (value: unknown) => Draft;
  readonly reduce: (draft: Draft, action: Action) => Draft;
}

export interface KeptDraft<Draft, Action> {
  /** Undefined until it is known whether one was kept. */
  readonly draft: Draft | undefined;
  readonly act: (action: Action) => void;
  /** This browser keeps nothing. */
  readonly isUnkept: boolean;
}

/** @param keeping the same object at every call */
export function useKeptDraft<Draft, Action>(
  memory: TaskMemory,
  keeping: Keeping<Draft, Action>,
): KeptDraft<Draft, Action> {
  const [draft, setDraft] = useState<Draft | undefined>();
  const [isUnkept, setUnkept] = useState(false);
  const latest = useRef<Draft | undefined>(undefined);
  const waiting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const { task, from, reduce } = keeping;

  const keep = useCallback((): void => {
    clearTimeout(waiting.current);
    waiting.current = undefined;
    if (latest.current === undefined) return;
    memory.keep(task, latest.current).then(
      () => {
        setUnkept(false);
      },
      () => {
        setUnkept(true);
      },
    );
  }, [memory, task]);

  const show = useCallback((next: Draft): void => {
    latest.current = next;
    setDraft(next);
  }, []);

  useEffect(() => {
    let isCurrent = true;
    memory.read(task).then(
      (found) => {
        if (isCurrent) show(from(found));
      },
      () => {
        if (!isCurrent) return;
        setUnkept(true);
        show(from(undefined));
      },
    );
    const leaving = (): void => {
      if (waiting.current !== undefined) keep();
    };
    window.addEventListener("pagehide", leaving);
    document.addEventListener("visibilitychange", leaving);
    return () => {
      isCurrent = false;
      leaving();
      window.removeEventListener("pagehide", leaving);
      document.removeEventListener("visibilitychange", leaving);
    };
  }, [memory, keep, show, task, from]);

  const act = useCallback(
    (action: Action): void => {
      if (latest.current === undefined) return;
      show(reduce(latest.current, action));
      waiting.current ??= setTimeout(keep, pause);
    },
    [keep, show, reduce],
  );
  return { draft, act, isUnkept };
}

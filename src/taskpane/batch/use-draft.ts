/** The batch under way, kept by the browser after each change, and taken up again. */
import { useCallback, useEffect, useRef, useState } from "react";
import type { TaskMemory } from "../drafts/task-memory";
import { type Draft, newDraft } from "./draft";
import { type Action, reduce } from "./reducer";
import { draftFrom } from "./stored";

const task = "batch";
/** Typing is written within this many milliseconds; any other act at once, and leaving the page too. */
const pause = 400;

const isTyping = ({ do: what }: Action): boolean =>
  what === "type" || what === "write" || what === "share";

export interface Drafting {
  /** Undefined until it is known whether one was kept. */
  readonly draft: Draft | undefined;
  readonly act: (action: Action) => void;
  readonly begin: () => void;
  /** This browser keeps nothing. */
  readonly isUnkept: boolean;
}

export function useDraft(memory: TaskMemory): Drafting {
  const [draft, setDraft] = useState<Draft | undefined>();
  const [isUnkept, setUnkept] = useState(false);
  const latest = useRef<Draft | undefined>(undefined);
  const waiting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  const keep = useCallback((): void => {
    clearTimeout(waiting.current);
    waiting.current = undefined;
    const now = latest.current;
    if (now === undefined) return;
    memory.keep(task, now).then(
      () => {
        setUnkept(false);
      },
      () => {
        setUnkept(true);
      },
    );
  }, [memory]);

  const show = useCallback((next: Draft): void => {
    latest.current = next;
    setDraft(next);
  }, []);

  useEffect(() => {
    let isCurrent = true;
    memory.read(task).then(
      (found) => {
        if (isCurrent) show(draftFrom(found));
      },
      () => {
        if (!isCurrent) return;
        setUnkept(true);
        show(newDraft());
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
  }, [memory, keep, show]);

  const act = useCallback(
    (action: Action): void => {
      if (latest.current === undefined) return;
      show(reduce(latest.current, action));
      if (isTyping(action)) waiting.current ??= setTimeout(keep, pause);
      else keep();
    },
    [keep, show],
  );

  const begin = useCallback((): void => {
    show(newDraft(latest.current));
    keep();
  }, [keep, show]);

  return { draft, act, begin, isUnkept };
}

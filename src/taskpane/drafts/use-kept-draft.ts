/** The draft of a task, kept by the browser after each change, and taken up again. */
import { useCallback, useEffect, useRef, useState } from "react";
import { ofWorkbook } from "./of-workbook";
import type { TaskMemory } from "./task-memory";
import { type Held, useHolding } from "./use-holding";
import { useLeaving } from "./use-leaving";

/** Typing is written within this many milliseconds; any other act at once, and leaving the page too. */
const pause = 400;

export interface Keeping<Draft, Action> {
  /** Its name in the browser's storage. */
  readonly task: string;
  /** A draft out of storage, or a fresh one. */
  readonly from: (value: unknown) => Draft;
  readonly reduce: (draft: Draft, action: Action) => Draft;
  readonly isTyping: (action: Action) => boolean;
}

export interface KeptDraft<Draft, Action> {
  /** Undefined until it is known whether one was kept. */
  readonly draft: Draft | undefined;
  readonly act: (action: Action) => void;
  /** Another draft in its place: the next one, made of this one. */
  readonly replace: (next: (now: Draft | undefined) => Draft) => void;
  /** This browser keeps nothing. */
  readonly isUnkept: boolean;
  /** Another tab may have it open too. */
  readonly held: Held;
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
  const { task, from, reduce, isTyping } = keeping;

  const keep = useCallback((): Promise<void> => {
    clearTimeout(waiting.current);
    waiting.current = undefined;
    if (latest.current === undefined) return Promise.resolve();
    return memory.keep(task, latest.current).then(
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
    return () => {
      isCurrent = false;
    };
  }, [memory, show, task, from]);

  const held = useHolding(
    `task/${ofWorkbook(task, memory.workbook)}`,
    () => (waiting.current === undefined ? Promise.resolve() : keep()),
    async () => {
      clearTimeout(waiting.current);
      waiting.current = undefined;
      show(from(await memory.read(task)));
    },
  );
  const isWriter = useRef(true);
  isWriter.current = held.isWriter;

  useLeaving(
    useCallback(() => {
      if (waiting.current !== undefined && isWriter.current) void keep();
    }, [keep]),
  );

  const act = useCallback(
    (action: Action): void => {
      if (latest.current === undefined || !isWriter.current) return;
      show(reduce(latest.current, action));
      if (isTyping(action)) {
        waiting.current ??= setTimeout(() => {
          if (isWriter.current) void keep();
        }, pause);
      } else void keep();
    },
    [keep, show, reduce, isTyping],
  );

  const replace = useCallback(
    (next: (now: Draft | undefined) => Draft): void => {
      if (!isWriter.current) return;
      show(next(latest.current));
      void keep();
    },
    [keep, show],
  );
  return { draft, act, replace, isUnkept, held };
}

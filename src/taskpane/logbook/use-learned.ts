/** What the browser keeps of agreed logbooks: read before a workbook is looked through, kept at each agreeing. */
import { useCallback, useEffect, useRef } from "react";
import type { TaskMemory } from "../drafts/task-memory";
import { asLearned, type Learned, learnedIn, learnedTask, withAgreed } from "./learned";
import { type Action, agreedTables, type LogbookState } from "./state";

/** A browser that keeps nothing has learned nothing. */
const nothing = (): undefined => undefined;

/** @returns what makes an answer to "what is there" one by what was learned */
export function useLearned(
  memory: TaskMemory,
  state: LogbookState,
): (found: Action) => Promise<Action> {
  const known = useRef<readonly Learned[]>([]);
  const agreed = agreedTables(state);
  const key = JSON.stringify(agreed.map(({ mapping }) => mapping));
  const latest = useRef(agreed);
  latest.current = agreed;
  useEffect(() => {
    if (latest.current.length === 0) return;
    known.current = withAgreed(known.current, latest.current);
    memory.keep(learnedTask, known.current).catch(nothing);
  }, [memory, key]);
  return useCallback(
    async (found) => {
      if (found.do !== "found") return found;
      known.current = learnedIn(await memory.read(learnedTask).catch(nothing));
      return { ...found, tables: found.tables.map((each) => asLearned(each, known.current)) };
    },
    [memory],
  );
}

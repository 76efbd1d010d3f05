/** A draft that is begun takes from My bench what it has nothing of, once for what the bench says. */
import { useEffect, useRef, useState } from "react";
import type { BenchValues } from "../../workbook/tables/bench";
import type { BeginWith, Entered, SteppedTask } from "../stepped/entered";
import type { DecimalMark } from "../widgets/typed-number";
import { gapWords } from "./gaps";

export interface Gaps<Task extends SteppedTask, Draft extends Entered<Task>> {
  readonly task: Task;
  /** Undefined while there is none, or none that is begun. */
  readonly draft: Draft | undefined;
  /** Which draft it is, where there are several. */
  readonly id: string;
  /** Undefined while nothing was read. */
  readonly values: BenchValues | undefined;
  readonly mark: DecimalMark;
  readonly of: (draft: Draft, values: BenchValues, mark: DecimalMark) => BeginWith<Task>;
  readonly act: (action: BeginWith<Task>) => void;
}

/** @returns what was filled in, in words; empty where nothing was */
export function useGaps<Task extends SteppedTask, Draft extends Entered<Task>>(
  gaps: Gaps<Task, Draft>,
): readonly string[] {
  const done = useRef(new Set<string>());
  const [filled, setFilled] = useState<Readonly<Record<string, readonly string[]>>>({});
  const now = useRef(gaps);
  now.current = gaps;
  const { draft, id } = gaps;
  const said = gaps.values && JSON.stringify(gaps.values);
  const isBegun = draft !== undefined;
  useEffect(() => {
    const { task, draft: begun, values, mark, of, act } = now.current;
    if (begun === undefined || values === undefined) return;
    const turn = `${id} ${said ?? ""}`;
    if (done.current.has(turn)) return;
    done.current.add(turn);
    const found = of(begun, values, mark);
    const words = gapWords(task, found);
    if (words.length === 0) return;
    setFilled((all) => ({ ...all, [id]: words }));
    act(found);
  }, [id, said, isBegun]);
  return filled[id] ?? [];
}

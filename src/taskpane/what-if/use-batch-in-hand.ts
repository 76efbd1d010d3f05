/** The batch that is under way, as the browser keeps it: what a table over sizes begins from. */
import { useEffect, useState } from "react";
import { type Draft, newDraft } from "../batch/draft";
import { draftFrom } from "../batch/stored";
import type { TaskMemory } from "../drafts/task-memory";

/**
 * @param turn another each time it is to be read anew
 * @returns undefined until it was read
 */
export function useBatchInHand(
  memory: TaskMemory,
  turn: number | undefined,
): { readonly batch: Draft; readonly turn: number | undefined } | undefined {
  const [found, setFound] = useState<ReturnType<typeof useBatchInHand>>();
  useEffect(() => {
    let isCurrent = true;
    const show = (batch: Draft): void => {
      if (isCurrent) setFound({ batch, turn });
    };
    memory.read("batch").then(
      (value) => {
        show(draftFrom(value));
      },
      () => {
        show(newDraft());
      },
    );
    return () => {
      isCurrent = false;
    };
  }, [memory, turn]);
  return found;
}

/** Which tasks hold something that was begun and not recorded, as far as this browser keeps it. */
import { useEffect, useState } from "react";
import { listOf, objectOf } from "./drafts/believed";
import type { TaskProps } from "./task-props";

type Kept = Pick<TaskProps, "drafts" | "memory">;

const looks: Readonly<Record<string, (kept: Kept) => Promise<boolean>>> = {
  titrate: async ({ drafts }) => (await drafts.all()).some(({ draft }) => !draft.isRecorded),
  async batch({ memory }) {
    const { lots, isRecorded } = objectOf(await memory.read("batch"));
    return isRecorded !== true && listOf(lots).length > 0;
  },
  async fuel({ memory }) {
    const kept = await memory.read("fuel");
    if (kept === undefined) return false;
    const { draftFrom, isUnderWay } = await import(/* webpackChunkName: "fuel" */ "./fuel/draft");
    return isUnderWay(draftFrom(kept));
  },
};

const none: ReadonlySet<string> = new Set();

/** The ids of those tasks. */
export async function underWay(kept: Kept): Promise<ReadonlySet<string>> {
  const found = await Promise.all(
    Object.entries(looks).map(async ([task, look]) =>
      (await look(kept).catch(() => false)) ? [task] : [],
    ),
  );
  return new Set(found.flat());
}

/** What was typed last in the task that was left is kept by then, in milliseconds. */
const untilKept = 1000;

/** @param open the task that is open: asked for anew where that is another */
export function useUnderWay(kept: Kept | undefined, open: string): ReadonlySet<string> {
  const [found, setFound] = useState(none);
  const drafts = kept?.drafts;
  const memory = kept?.memory;
  useEffect(() => {
    setFound(none);
  }, [drafts, memory]);
  useEffect(() => {
    if (!drafts || !memory) return undefined;
    let isCurrent = true;
    const ask = (): void => {
      void underWay({ drafts, memory }).then((now) => {
        if (isCurrent) setFound(now);
      });
    };
    ask();
    const again = setTimeout(ask, untilKept);
    return () => {
      isCurrent = false;
      clearTimeout(again);
    };
  }, [drafts, memory, open]);
  return found;
}

/** What the browser keeps for the pane: drafts, each of one workbook, and what was learned beside any. */
import { lastWorkbooks, workbooksOf } from "./drafts/last-workbooks";
import { browserMemory } from "./drafts/task-memory";
import type { TaskProps } from "./task-props";
import { browserDrafts } from "./titrate/drafts/in-browser";

/** Before a name of ours for what has none. */
const inNoFile = "in no file/";

/** @param partition what the program calls this store's part; "" where there is none */
export function keptHere(partition: string, clock: () => number) {
  const titrations = browserDrafts(partition, clock);
  const memories = browserMemory(partition);
  const learned = memories.of("");

  const forget = async (workbook: string): Promise<void> => {
    await titrations.forget(workbook);
    await memories.forget(workbook);
  };
  const written = lastWorkbooks(learned, forget);

  return {
    /** @param workbook "" for the one that the page comes with */
    of(workbook: string): Pick<TaskProps, "drafts" | "memory" | "learned"> {
      const drafts = titrations.of(workbook);
      const memory = memories.of(workbook);
      return {
        drafts: {
          ...drafts,
          async keep(draft) {
            await drafts.keep(draft);
            void written(workbook);
          },
        },
        memory: {
          ...memory,
          async keep(task, value) {
            await memory.keep(task, value);
            void written(workbook);
          },
        },
        learned,
      };
    },
    /** Workbooks in no file that something may have been typed beside, the latest first. */
    async unsaved(): Promise<readonly string[]> {
      const all = await workbooksOf(learned).catch(() => []);
      return [...all.filter((each) => each.startsWith(inNoFile)), ""];
    },
    /** What a workbook in no file is called, once the drafts of the others are left alone. */
    anotherUnsaved: (): string => `${inNoFile}${String(clock())}`,
    /** Every draft of a workbook that is no more; never those of the one that the page comes with. */
    forget,
  };
}

export type KeptHere = ReturnType<typeof keptHere>;

/**
 * The workbooks that have drafts here, the one that was typed beside last first. A draft is small and a
 * file may come back after months; but they are not heaped up for ever.
 */
import { listOf } from "./believed";
import type { TaskMemory } from "./task-memory";

/** Beyond these the drafts of the workbook that nothing was typed beside for the longest are given up. */
const mostWorkbooks = 30;

const task = "workbooks";

/** Those that have drafts here, the one that was typed beside last first; without the one that the page comes with. */
export const workbooksOf = async (shared: Pick<TaskMemory, "read">): Promise<readonly string[]> =>
  listOf(await shared.read(task)).filter((each) => typeof each === "string");

/**
 * @param shared the memory that belongs to no workbook
 * @returns what is told of each draft that is kept
 */
export function lastWorkbooks(
  shared: Pick<TaskMemory, "read" | "keep">,
  forget: (workbook: string) => Promise<void>,
): (workbook: string) => Promise<void> {
  let latest = "";
  let running = Promise.resolve();

  const note = async (workbook: string): Promise<void> => {
    const before = await workbooksOf(shared);
    const list = [workbook, ...before.filter((each) => each !== workbook)];
    for (const gone of list.slice(mostWorkbooks)) await forget(gone);
    await shared.keep(task, list.slice(0, mostWorkbooks));
  };

  return (workbook) => {
    // the one that the page comes with is always there
    if (workbook !== "" && workbook !== latest) {
      latest = workbook;
      // that it was used last is worth no refusal
      running = running.then(() => note(workbook)).catch(() => undefined);
    }
    return running;
  };
}

/**
 * What a task of the pane had typed into it, kept in the browser's own storage between openings. One
 * value a task and workbook; whoever reads one believes it part by part, for it may come from an older
 * version.
 */
import { KeptValues } from "./kept-values";
import { isOfWorkbook, ofWorkbook } from "./of-workbook";

/** Either verb may fail, by a rejected promise: a full disk, a browser that keeps nothing. */
export interface TaskMemory {
  /** Which one it is the memory of; "" for the one that the page comes with. */
  readonly workbook: string;
  read(task: string): Promise<unknown>;
  keep(task: string, value: unknown): Promise<void>;
}

/** @param partition what the program calls this store's part; "" where there is none */
export function browserMemory(partition: string) {
  // a database of its own: a store cannot be added to one that is there
  const store = new KeptValues("titrebook-tasks", "tasks");
  const beginning = `${partition}/`;
  return {
    of(workbook: string): TaskMemory {
      const key = (task: string): string => beginning + ofWorkbook(task, workbook);
      return {
        workbook,
        read: (task) => store.get(key(task)),
        keep: (task, value) => store.put(key(task), value),
      };
    },
    /** All that was typed beside a workbook. */
    forget: (workbook: string): Promise<void> =>
      store.forgetThose((key) => key.startsWith(beginning) && isOfWorkbook(key, workbook)),
  };
}

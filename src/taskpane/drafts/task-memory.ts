/**
 * What a task of the pane had typed into it, kept in the browser's own storage between openings. One
 * value a task; whoever reads one believes it part by part, for it may come from an older version.
 */
import { KeptValues } from "./kept-values";

/** Either verb may fail, by a rejected promise: a full disk, a browser that keeps nothing. */
export interface TaskMemory {
  read(task: string): Promise<unknown>;
  keep(task: string, value: unknown): Promise<void>;
}

/** @param partition what the program calls this store's part; "" where there is none */
export function browserMemory(partition: string): TaskMemory {
  // a database of its own: a store cannot be added to one that is there
  const store = new KeptValues("titrebook-tasks", "tasks");
  const key = (task: string): string => `${partition}/${task}`;
  return {
    read: (task) => store.get(key(task)),
    keep: (task, value) => store.put(key(task), value),
  };
}

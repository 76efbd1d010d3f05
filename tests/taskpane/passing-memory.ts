/** A task's memory that is gone with the test. */
import type { TaskMemory } from "../../src/taskpane/drafts/task-memory";

export function passingMemory(): TaskMemory {
  const kept = new Map<string, unknown>();
  return {
    workbook: "",
    read: (task) => Promise.resolve(kept.get(task)),
    keep(task, value) {
      kept.set(task, structuredClone(value));
      return Promise.resolve();
    },
  };
}

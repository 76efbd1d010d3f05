/**
 * What can be wrong with a workbook file, or with an edit asked of it. As everywhere, a problem is a
 * value, declared with its sentence in sentences.ts. Inside this folder it travels as an exception, since
 * the XML reader calls back; the doors (open.ts, patch.ts) turn it into a value.
 */
import type { FileProblemFields } from "./sentences";

export class FileProblem {
  constructor(readonly fields: FileProblemFields) {}
}

export const isFileProblem = (value: unknown): value is FileProblem => value instanceof FileProblem;

class Refused extends Error {
  constructor(readonly problem: FileProblem) {
    super(problem.fields.code);
  }
}

/** Stop, and let the door answer with this problem. */
export function refuse(fields: FileProblemFields): never {
  throw new Refused(new FileProblem(fields));
}

/** What some work comes to, or the problem that stopped it. Nothing it throws gets out. */
export function answer<T>(work: () => T): T | FileProblem {
  try {
    return work();
  } catch (stopped) {
    if (stopped instanceof Refused) return stopped.problem;
    const detail = stopped instanceof Error ? stopped.message : "no reason given";
    return new FileProblem({ code: "failed", detail });
  }
}

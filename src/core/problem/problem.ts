/**
 * What can be wrong with a question put to the core. A problem is a value: a code and the fields its
 * sentence needs, both declared with the sentence in sentences.ts, and nowhere else.
 */
import type { ProblemCode, ProblemFields } from "./sentences";

/** A problem is told from a result by its class, so that a result may be any other value. */
export class Problem {
  constructor(readonly fields: ProblemFields) {}
}

export const problem = (fields: ProblemFields): Problem => new Problem(fields);

export const isProblem = (value: unknown): value is Problem => value instanceof Problem;

/** A result, or what stands in its way. */
export type Outcome<T> = T | Problem;

const notFilledIn: ReadonlySet<ProblemCode> = new Set<ProblemCode>([
  "not-filled-in",
  "no-blank",
  "too-few",
  "not-available",
  "no-repeats",
  "usual-alone",
  "too-many-replicates",
]);

/** Nothing is wrong, something is still missing: shown as #N/A, which charts skip. */
export const isMissing = (found: Problem): boolean => notFilledIn.has(found.fields.code);

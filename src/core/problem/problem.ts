/**
 * What can be wrong with a question put to the core. A problem is a value: a code and the fields its
 * sentence needs. The sentences stand in wording.ts, and nowhere else.
 */
import type { Exact } from "../exact/exact";

/** Where inside a range a cell stands, counted from 1. Absent for a single cell. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** What can make a formula's text unreadable. */
export type FormulaTrouble =
  | "empty"
  | "too-long"
  | "too-deep"
  | "text-not-closed"
  | "bracket-not-closed"
  | "value-missing"
  | "operator-missing"
  | "stray"
  | "unreadable"
  | "not-a-reference"
  | "not-a-constant"
  | "uneven-rows"
  | "number-too-large";

export type ProblemFields =
  // not filled in, or not enough data: #N/A
  | { code: "not-filled-in"; argument: string; called: string }
  | { code: "no-blank" }
  | { code: "too-few"; argument: string; called: string; given: number; needed: number }
  | { code: "not-available"; argument: string; place?: Place | undefined }
  | { code: "no-repeats" }
  | { code: "usual-alone"; given: string; missing: string }
  | { code: "too-many-replicates"; scatter: Exact; halfWidth: Exact; most: number }
  // wrong: #VALUE!
  | {
      code: "not-a-number";
      argument: string;
      given: string;
      /** What to type instead, where the text looks like a number; else "". */
      hint: string;
      /** The word that may stand there in place of a figure. */
      orWord?: string;
      place?: Place | undefined;
    }
  | { code: "error-cell"; argument: string; error: string; place?: Place | undefined }
  | { code: "not-one-cell"; argument: string; rows: number; columns: number }
  | {
      code: "out-of-range";
      argument: string;
      given: Exact;
      unit: string;
      allowed: string;
      hint: string;
      place?: Place | undefined;
    }
  | { code: "not-whole"; argument: string; given: Exact }
  | { code: "one-day"; day: Exact }
  | { code: "no-strength-left"; strength: Exact }
  | { code: "unknown-word"; argument: string; given: string; allowed: string }
  | { code: "which-gallon"; argument: string }
  | { code: "neutralised-and-figure" }
  | { code: "titre-below-blank"; titre: Exact; blank: Exact }
  | { code: "titre-equals-blank"; titre: Exact; blank: Exact; sought?: string }
  | { code: "too-much-acid"; quantity: "acid value" | "FFA"; given: Exact; limit: Exact }
  | { code: "acid-above-limit"; ffaPercent: Exact; limitPercent: Exact }
  | { code: "unpaired"; filled: string; missing: string; place: Place; advice: string }
  | { code: "shapes-differ"; first: string; second: string }
  | { code: "rows-differ"; first: string; second: string }
  | { code: "solid-fat"; oil: string; lowest: Exact; temperature: Exact }
  | { code: "too-much-oil"; given: Exact; limit: Exact }
  | { code: "equal-lots"; acidValue: Exact }
  | { code: "target-outside"; target: Exact; low: Exact; high: Exact }
  | { code: "no-triglyceride-left"; acidValue: Exact; limit: Exact }
  | { code: "too-much"; called: string; given: Exact; unit: string; limit: Exact }
  | { code: "titre-not-below-blank"; titre: Exact; blank: Exact }
  | { code: "free-above-total"; free: Exact; total: Exact }
  | { code: "more-than-bound"; left: Exact; bound: Exact }
  | { code: "nothing-in-dish"; argument: string; given: Exact; dish: Exact }
  | { code: "heavier-dried"; before: Exact; after: Exact }
  | { code: "nothing-lost"; after: Exact }
  | { code: "volumes-not-rising"; before: Exact; after: Exact }
  | { code: "too-few-points"; given: number; needed: number }
  | { code: "flat-curve" }
  | { code: "end-at-edge"; side: "before" | "past"; from: Exact; to: Exact }
  | { code: "too-large-to-show" }
  // a formula as text; `at` counts characters from 1
  | { code: "broken-formula"; trouble: FormulaTrouble; at: number; found: string }
  | { code: "unknown-function"; given: string }
  | { code: "too-many-arguments"; called: string; given: number; most: number }
  | { code: "no-call"; given: string }
  | { code: "no-figure"; given: string };

export type ProblemCode = ProblemFields["code"];

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

import { isMissing, isProblem } from "../../src/core/problem/problem";
import { say } from "../../src/core/problem/wording";
import type { Answer } from "../../src/functions/answer";
import { functionNamed } from "../../src/functions/catalogue";
import type { WorksheetFunction } from "../../src/functions/define";

export type Seen = { value: Answer } | { error: "#N/A" | "#VALUE!"; message: string };

/** What a cell would show, and the sentence behind an error. */
export function outcome(entry: WorksheetFunction, given: readonly unknown[]): Seen {
  const answer = entry.evaluate(given);
  if (!isProblem(answer)) return { value: answer };
  return { error: isMissing(answer) ? "#N/A" : "#VALUE!", message: say(answer) };
}

/** The same, by the function's id. */
export function call(id: string, ...given: unknown[]): Seen {
  const entry = functionNamed(id);
  if (!entry) throw new Error(`no function ${id}`);
  return outcome(entry, given);
}

/** The number a call gives; anything else fails the test. */
export function figure(id: string, ...given: unknown[]): number {
  const seen = call(id, ...given);
  if ("value" in seen && typeof seen.value === "number") return seen.value;
  throw new Error(`${id} gave ${JSON.stringify(seen)}`);
}

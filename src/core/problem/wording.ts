/** From a problem to its sentence. */
import type { Problem } from "./problem";
import { type ProblemFields, sentences } from "./sentences";

/** The sentence for a problem. */
export function say(found: Problem): string {
  const write = sentences[found.fields.code] as (fields: ProblemFields) => string;
  return write(found.fields);
}

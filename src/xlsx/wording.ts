/** From a problem of a file to its sentence. */
import type { FileProblem } from "./problem";
import { type FileProblemFields, sentences } from "./sentences";

/** The sentence for a problem with a file. */
export function sayFile(found: FileProblem): string {
  const write = sentences[found.fields.code] as (fields: FileProblemFields) => string;
  return write(found.fields);
}

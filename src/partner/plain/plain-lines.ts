/** A call written out in plain formulas, as lines of text. */
import type { PlainCall } from "./plain-call";

/** Helper cells first, each with what it holds; then the answer. */
export function plainLines(plain: PlainCall): string[] {
  if (plain.kind === "value") return ["none: a copy keeps what stands there"];
  if (plain.kind === "none") return [`none: ${plain.reason}`];
  const helpers = plain.helpers.map(({ cell, label, formula }) => `${cell}  ${label}: ${formula}`);
  const isTable = plain.answer.length > 1;
  const answer = plain.answer.map(({ cell, formula }) =>
    isTable ? `${cell}  ${formula}` : formula,
  );
  return [...helpers, ...answer];
}

/** Several figures typed in one field. A comma may be a decimal mark, so spaces stand between them. */
import type { Exact } from "../../core/exact/exact";
import { judge, type NumberFieldFact } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";

export type JudgedList =
  | { readonly kind: "empty" }
  | { readonly kind: "figures"; readonly values: readonly Exact[] }
  | { readonly kind: "wrong"; readonly sentence: string; readonly mayBecomeRight: boolean };

/** A semicolon, white space, or a comma with white space after it. */
const between = /[;\s]+|,(?=\s|$)/;

/**
 * @param most figures that may be given
 * @example judgeList("100, 200; 2,5", …) // 100, 200, 2.5
 */
export function judgeList(
  text: string,
  fact: NumberFieldFact,
  mark: DecimalMark,
  most: number,
): JudgedList {
  const parts = text.split(between).filter((part) => part !== "");
  if (parts.length === 0) return { kind: "empty" };
  const values: Exact[] = [];
  for (const [at, part] of parts.entries()) {
    const found = judge(part, fact, mark);
    if (found.kind === "figure") values.push(found.value);
    if (found.kind === "wrong") {
      const isLast = at === parts.length - 1 && !/[;\s]$/.test(text);
      const sentence = /[,.'].*[,.']/.test(part)
        ? `${fact.label}: "${part.slice(0, 20)}" has more than one mark; put a space between two figures.`
        : found.sentence;
      return { kind: "wrong", sentence, mayBecomeRight: isLast && found.mayBecomeRight };
    }
  }
  if (values.length > most) {
    const sentence = `${fact.label}: ${String(values.length)} are too many for one table; ${String(most)} at most.`;
    return { kind: "wrong", sentence, mayBecomeRight: false };
  }
  return { kind: "figures", values };
}

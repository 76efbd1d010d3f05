/** The verdict as a sentence. The plain-formula twin says the same words. */
import type { Exact } from "../exact/exact";
import { shown } from "../exact/rounding";
import { type AgainstLimit, againstLimit } from "./against-limit";

/** Of what is worked out; the limit stands as it was typed. */
export const limitDigits = 4;
export const decidingDigits = 2;

export const againstLimitWords = {
  below: (limit: string, lower: string): string =>
    `below: at least 95 % sure to be under the limit of ${limit}, as is anything up to ${lower}.`,
  above: (limit: string, upper: string): string =>
    `above: at least 95 % sure to be over the limit of ${limit}, as is anything beyond ${upper}.`,
  between: (lower: string, upper: string): string => `between ${lower} and ${upper}`,
  upTo: (upper: string): string => `up to ${upper}`,
  cannotTell: (limit: string, span: string, deciding: string): string =>
    `cannot tell: it may be under or over ${limit}, as may anything ${span}. ${deciding}`,
  decides: (deciding: string): string => `A ± under ${deciding} would decide it.`,
  atLimit: "It is at the limit itself, where no ± decides.",
} as const;

const few = (value: Exact, digits = limitDigits): string =>
  shown(value.toSignificantDigits(digits));

const spanOf = ({ lower, upper }: AgainstLimit): string =>
  lower.gt(0)
    ? againstLimitWords.between(few(lower), few(upper))
    : againstLimitWords.upTo(few(upper));

/** @returns a sentence that begins with the verdict and a colon */
export function againstLimitInWords(value: Exact, uncertainty: Exact, limit: Exact): string {
  const found = againstLimit(value, uncertainty, limit);
  if (found.verdict === "below") return againstLimitWords.below(shown(limit), few(found.lower));
  if (found.verdict === "above") return againstLimitWords.above(shown(limit), few(found.upper));
  const { deciding } = found;
  const decides = deciding.isZero()
    ? againstLimitWords.atLimit
    : againstLimitWords.decides(few(deciding, decidingDigits));
  return againstLimitWords.cannotTell(shown(limit), spanOf(found), decides);
}

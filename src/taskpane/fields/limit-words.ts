/** The acid limit in words for the pane, where what to do stands below: no function is named. */
import { shownAbove } from "../../core/exact/rounding";
import type { Problem } from "../../core/problem/problem";
import { fixed } from "../widgets/shown-number";
import { say } from "../../core/problem/wording";

export function limitWords(found: Problem): string {
  const { fields } = found;
  if (fields.code !== "acid-above-limit") return say(found);
  const { ffaPercent: ffa, limitPercent: limit } = fields;
  // to the hundredth, as it is shown elsewhere; to more where that would be the limit itself
  const shown = ffa.toDecimalPlaces(2).gt(limit) ? fixed(ffa, 2) : shownAbove(ffa, limit);
  return `${shown} % FFA is above the ${limit.toString()} % you allow.`;
}

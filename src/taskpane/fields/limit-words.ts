/** The acid limit in words for the pane, where what to do stands below: no function is named. */
import { shownAbove } from "../../core/exact/rounding";
import type { Problem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";

export const limitWords = (found: Problem): string =>
  found.fields.code === "acid-above-limit"
    ? `${shownAbove(found.fields.ffaPercent, found.fields.limitPercent)} % FFA is above the ${found.fields.limitPercent.toString()} % you allow.`
    : say(found);

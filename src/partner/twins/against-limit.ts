/** The twin of AGAINSTLIMIT: the verdict in the core's own words. */
import {
  againstLimitWords as words,
  decidingDigits,
  limitDigits,
} from "../../core/fuel/against-limit-words";
import { shown } from "./shared/shown-text";
import { atMost, spoken, text, when } from "./shared/text";
import type { Work } from "./shared/work";

const guard = "1.645/1.96";
const digits = 10;
/** Two doubles of one decimal may differ by this part. */
const rounding = "1E-14";

export const againstLimit: Work = (reading) => {
  const value = reading.figure("value");
  const doubt = reading.figure("uncertainty");
  const limit = reading.figure("limit");
  const { helper } = reading.call;
  const lower = helper(
    "at or below this it is under the limit",
    reading.guarded(`${limit}-${doubt}*${guard}`),
  );
  const upper = helper(
    "above this it is over the limit",
    reading.guarded(`${limit}+${doubt}*${guard}`),
  );
  const off = `ABS(${value}-${limit})`;
  const isAtLimit = `${off}<=${rounding}*${limit}`;
  const deciding = helper(
    "a ± that would just decide it",
    reading.guarded(when(isAtLimit, "1", `${off}*1.96/1.645`)),
  );
  const shownLimit = shown(reading, limit, digits);
  const few = (cell: string, most: number) => shown(reading, cell, most);
  const shownLower = few(
    helper("that lower limit where it is above 0", when(`${lower}>0`, lower, "1")),
    limitDigits,
  );
  const shownUpper = few(upper, limitDigits);
  const decides = when(
    isAtLimit,
    text(words.atLimit),
    spoken(words.decides, few(deciding, decidingDigits)),
  );
  const span = when(
    `${lower}>0`,
    spoken(words.between, shownLower, shownUpper),
    spoken(words.upTo, shownUpper),
  );
  return reading.answer(
    when(
      atMost(value, lower),
      spoken(words.below, shownLimit, shownLower),
      when(
        atMost(value, upper),
        spoken(words.cannotTell, shownLimit, span, decides),
        spoken(words.above, shownLimit, shownUpper),
      ),
    ),
  );
};

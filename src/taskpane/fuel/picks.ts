/** What is picked for a fuel, each said once. */
import { methanolTrial, oilLeft, trialMix } from "../../core/batch/went";
import { basePick } from "../fields/picks";
import { pick, type PickedOf } from "../fields/pick-facts";
import { unitWords } from "../fields/units";
import { waterPick } from "../water/fields";

export const picks = {
  /** Never taken for granted: soap hides acid. */
  washed: pick("buttons", "The fuel is", { yes: "Washed", no: "Not washed" }, ""),
  base: basePick({ isKept: true }),
  /** Its row holds litres. */
  madeIn: pick(
    "list",
    "Fuel is measured in",
    { l: unitWords.l, us_gal: unitWords.us_gal, uk_gal: unitWords.uk_gal },
    "l",
    { isKept: true },
  ),
  waterBy: waterPick,
  trial: pick(
    "buttons",
    `${methanolTrial}: ${trialMix}`,
    { clear: "clear", cloudy: "cloudy", [oilLeft]: oilLeft },
    "",
  ),
} as const;

export type MadeIn = PickedOf<typeof picks>["madeIn"];

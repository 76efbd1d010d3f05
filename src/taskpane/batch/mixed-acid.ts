/** The acid value of what goes into the vessel, as other tasks are told it. */
import { isProblem } from "../../core/problem/problem";
import { digits } from "../widgets/shown-number";
import type { Seen } from "./seen";

const acidDigits = 6;

/** Plain digits with a point; undefined while it is not known. */
export function mixedAcid({ working: { mix } }: Pick<Seen, "working">): string | undefined {
  return mix === undefined || isProblem(mix) ? undefined : digits(mix.acidValue, acidDigits);
}

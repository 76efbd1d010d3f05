/** How a figure may have been worked out: the right way, and the ways people are known to go wrong. */
import type { Base } from "../../core/reference/bases";
import type { FattyAcid } from "../../core/reference/fatty-acids";

/** How the working goes, where it is not the right way. */
export interface Ways {
  readonly average?: "zeros";
  readonly blank?: "ignored" | "added";
  readonly strength?: "percent";
  readonly sampleDensity?: "one";
  readonly acid?: FattyAcid;
  /** What % FFA is multiplied by where it goes wrong by a hundredfold. */
  readonly ffaScale?: number;
  readonly oilDensity?: "one";
  readonly gallon?: "other";
  readonly acidPart?: "by-charge" | "left-out";
  readonly otherBase?: Base;
  readonly assay?: "ignored" | "multiplied" | "over-hundred" | "under-hundred";
  /** Ways that are right too: a titrant weighed from the same lye, a charge as weighed. */
  readonly strengthAsWeighed?: boolean;
  /** Grams of lye as it comes, counted as if they were pure: % FFA is then a little too high. */
  readonly strengthAsPure?: boolean;
  readonly chargeAsWeighed?: boolean;
  readonly atTemperature?: boolean;
  /** Litres from the amount, though the kilograms are held as well. */
  readonly litresByAmount?: boolean;
}

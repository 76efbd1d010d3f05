/** How a figure may have been worked out: the right way, and the ways people are known to go wrong. */
import type { Base } from "../../core/reference/bases";
import type { FattyAcid } from "../../core/reference/fatty-acids";

/** How the working goes, where it is not the right way. */
export interface Ways {
  readonly average?: "zeros";
  readonly blank?: "ignored" | "added" | "twice";
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
  /** Right too: litres from the amount, though the kilograms are held as well. */
  readonly litresByAmount?: boolean;
}

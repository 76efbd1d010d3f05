import { indicatorNamed } from "../../core/reference/indicators";

/** A few words for the bench (common practice, no source, unless named). */
export const readingTips = (indicator: string): readonly string[] => [
  "White paper under the glass.",
  `Stop at the first ${indicatorNamed(indicator)?.to ?? "colour"} that stays, and at the same shade each time.`,
  "Dark oil: more solvent, thymolphthalein or alkali blue (ISO 660), or a probe.",
];

export const blankTips: readonly string[] = [
  "Same solvent, same amount, same drops of indicator, no oil.",
  "Stop at the same shade as with oil: then a drop too much cancels.",
  "Either titrate the blank or neutralise the solvent, never both.",
];

export const reasons: readonly string[] = [
  "air bubble",
  "went past the end point",
  "spilt",
  "misread",
  "colour not clear",
];

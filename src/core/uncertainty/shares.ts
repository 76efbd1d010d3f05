import { asFfa, type Contribution } from "./contributions";
import type { Expanded } from "./expanded";
import { normal95 } from "./standard-uncertainty";

/**
 * A part's share of the ± squared, percent. Scatter counts with its Student t and the rest with 1.96, as
 * in the ± itself, so that the largest share is where the largest gain lies.
 *   share = 100 (factor u / U)^2
 */
export const shareOfPart = (factor: number, part: number, halfWidth: number): number =>
  100 * ((factor * part) / halfWidth) ** 2;

export const shareOf = (each: Contribution, { t, halfWidth }: Expanded): number =>
  shareOfPart(each.isScatter ? t : normal95, asFfa(each), halfWidth);

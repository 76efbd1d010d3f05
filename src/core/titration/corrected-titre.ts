import { mean } from "../exact/lists";
import { exact } from "../exact/exact";
import { as, type Millilitre } from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";

/** No blanks: the solvent was neutralised to the same shade beforehand, and took nothing since. */
export const neutralised: readonly Millilitre[] = [];

/** Mean blank, mL; 0 when the solvent was neutralised beforehand. */
export const meanBlank = (blanks: readonly Millilitre[]): Millilitre =>
  as("mL", blanks.length === 0 ? exact(0) : mean(blanks));

/**
 * One titre less the blank.
 *   Vc = V - V0
 * @param titre mL, above 0
 * @param blank mean blank, mL
 * @returns mL, above 0; a titre that does not exceed the blank is a problem, not a negative number
 */
export function lessBlank(titre: Millilitre, blank: Millilitre): Outcome<Millilitre> {
  if (titre.lt(blank)) return problem({ code: "titre-below-blank", titre, blank });
  if (titre.eq(blank)) return problem({ code: "titre-equals-blank", titre, blank });
  return as("mL", titre.minus(blank));
}

/**
 * Corrected titre: the mean of the replicate titres less the mean blank.
 *   V = mean(V1..Vn) - mean(B1..Bk)
 * @param titres mL, one or more; each must exceed the mean blank
 * @param blanks mL; none means the solvent was neutralised beforehand
 * @returns mL, exact and unrounded: titres 2.34 and 2.35 less 0.05 give 2.295
 * @example correctedTitre([2.40, 2.50, 2.45], [0.15]) // 2.30
 */
export function correctedTitre(
  titres: readonly Millilitre[],
  blanks: readonly Millilitre[],
): Outcome<Millilitre> {
  const blank = meanBlank(blanks);
  for (const titre of titres) {
    if (titre.lte(blank)) return lessBlank(titre, blank);
  }
  return as("mL", mean(titres).minus(blank));
}

/** The largest share of a titre that the blank may be before it is worth a word: a third. */
export const blankShareWorthSaying = exact(1).div(3);

/** From here on most of what is read is blank: a result to be titrated again (common practice, no source). */
export const blankShareTooLarge = exact(2).div(3);

/** Mean blank as a share of the mean titre: the two that the result is the difference of. */
export const blankShare = (titres: readonly Millilitre[], blanks: readonly Millilitre[]) =>
  meanBlank(blanks).div(mean(titres));

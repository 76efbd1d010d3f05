/** Combining independent uncertainties (JCGM 100:2008, 5.1.2 and G.4.1). */

/** Square root of the sum of squares. */
export const combined = (uncertainties: readonly number[]): number =>
  Math.sqrt(uncertainties.reduce((total, each) => total + each * each, 0));

export interface WithFreedom {
  readonly uncertainty: number;
  /** Degrees of freedom; Infinity when it is known from limits. */
  readonly freedom: number;
}

/**
 * Effective degrees of freedom (Welch and Satterthwaite, GUM G.4.1).
 *   nu = uc^4 / sum( u^4 / nu )
 * From unrounded uncertainties: GUM's example H.1 shows 16.8 become 17.5 when uc is rounded first.
 * The product's own interval (expanded.ts) does without it, since with three titres it covers too
 * seldom; it stays here for the published cases.
 * @returns not truncated; Infinity when every part has infinitely many
 */
export function effectiveFreedom(parts: readonly WithFreedom[]): number {
  const total = combined(parts.map((part) => part.uncertainty));
  const weighed = parts.reduce((sum, part) => sum + part.uncertainty ** 4 / part.freedom, 0);
  return total ** 4 / weighed;
}

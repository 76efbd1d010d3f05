/**
 * What grams of lye mean: of the pure base, or of the lye as it comes out of its bag. A charge of 7 g/L
 * as weighed is 6.3 g/L of pure base where the lye is 90 %.
 */
import type { RoleId } from "./roles";
import type { Basis, LogbookMapping } from "./shape";

export { type Basis, bases } from "./shape";

/** Is it a mass of lye? A titrant in mol/L, or a dose, is not asked about. */
export const hasBasis = (role: RoleId): boolean => role === "strength" || role === "baseCharge";

/** What a heading or a label says of it. */
export function basisNamed(words: string): Basis | undefined {
  if (/\bas (?:weighed|is|supplied)\b|\bflakes?\b|\bunadjusted\b/i.test(words)) return "as weighed";
  return /\bpure\b/i.test(words) ? "pure" : undefined;
}

/** Of a role, in its column or as the one figure for all rows. */
export const basisOf = ({ columns, constants }: LogbookMapping, role: RoleId): Basis | undefined =>
  (columns.find((each) => each.role === role) ?? constants.find((each) => each.role === role))
    ?.basis;

export function withBasis(mapping: LogbookMapping, role: RoleId, basis: Basis): LogbookMapping {
  const said = <T extends { readonly role: RoleId }>(each: T): T =>
    each.role === role ? { ...each, basis } : each;
  return {
    ...mapping,
    columns: mapping.columns.map(said),
    constants: mapping.constants.map(said),
  };
}

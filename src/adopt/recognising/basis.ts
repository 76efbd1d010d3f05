/**
 * What grams of lye mean: of the pure base, or of the lye as it comes out of its bag. A charge of 7 g/L
 * as weighed is 6.3 g/L of pure base where the lye is 90 %.
 */
import type { Base } from "../../core/reference/bases";
import type { RoleId } from "./roles";
import type { Basis, LogbookMapping, MappedColumn } from "./shape";

export { type Basis, bases } from "./shape";

/** Is it a mass of lye? A titrant in mol/L, or a dose, is not asked about. */
export const hasBasis = (role: RoleId): boolean => role === "strength" || role === "baseCharge";

/** What a heading or a label says of it. */
export function basisNamed(words: string): Basis | undefined {
  if (/\bas (?:weighed|is|supplied)\b|\bflakes?\b|\bunadjusted\b/i.test(words)) return "as weighed";
  return /\bpure\b/i.test(words) ? "pure" : undefined;
}

/** A dose is said to be pure or as weighed by its heading alone; "90 % pure" is the lye that is weighed. */
export function doseBasisOf({ basis, heading }: MappedColumn): Basis | undefined {
  if (basis !== undefined) return basis;
  if (/\bweighed\b|\b(?!100)\d+(?:[.,]\d+)?\s*%\s*pure\b/i.test(heading)) return "as weighed";
  return basisNamed(heading);
}

/** May burette and vessel hold one lye? What is not known of either speaks for it. */
export const mayBeOneLye = (titrant: Base | undefined, catalyst: Base | undefined): boolean =>
  !titrant || !catalyst || titrant.name === catalyst.name;

/** Of one lye in burette and vessel, both in grams as weighed, the assay cancels in the dose. */
export const assayCancels = (
  isOneLye: boolean,
  strength: Basis | undefined,
  charge: Basis | undefined,
): boolean => isOneLye && strength === "as weighed" && charge === "as weighed";

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

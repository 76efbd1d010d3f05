import { exact, zero } from "../exact/exact";
import { as, type GramPerMole } from "../quantity/quantity";
import { atomicWeights, type Element } from "./atomic-weights";

const part = /([A-Z][a-z]?)(\d*)/g;

/**
 * Molar mass of a formula written without brackets.
 * @example molarMass("KOH").toString() // "56.1053"
 */
export function molarMass(formula: string): GramPerMole {
  let total = zero;
  for (const [, element, count] of formula.matchAll(part)) {
    const weight = atomicWeights[element as Element];
    total = total.plus(exact(weight).times(exact(count || "1")));
  }
  return as("g/mol", total);
}

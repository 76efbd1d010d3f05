import { computed } from "../exact/exact";
import { as, type Gram } from "../quantity/quantity";

/**
 * Half-width of the interval of a dose: only its acid part carries the doubt of the titration.
 *   acid part x U / FFA
 * @param acidPart g of lye for the acid alone
 * @param halfWidth expanded uncertainty, % FFA
 * @param ffa % FFA, above 0
 */
export const doseHalfWidth = (acidPart: Gram, halfWidth: number, ffa: number): Gram =>
  as("g", acidPart.times(computed(halfWidth)).div(computed(ffa)));

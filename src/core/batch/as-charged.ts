/** A base charge as people give it, brought to the one form that a dose is worked out from. */
import { hundred } from "../exact/exact";
import { as, type Celsius, type GramPerLitre, type Percent } from "../quantity/quantity";
import type { Outcome } from "../problem/problem";
import type { Oil } from "../reference/oils";
import { chargePercent } from "./conversions";

/** Percent of the oil's mass or grams per litre of oil, of pure base or of lye as weighed. */
export type GivenCharge = (
  | { readonly unit: "%"; readonly amount: Percent }
  | { readonly unit: "g/L"; readonly amount: GramPerLitre }
) & { readonly is: "pure" | "as weighed" };

const pure = as("%", hundred);

/**
 * @param assay percent, of the lye: it counts only where the charge is as weighed
 * @param temperature C, of the litre of oil; left out: 20 C
 * @returns percent of the oil's mass, as pure base
 * @example asCharged({ unit: "%", amount: 0.85, is: "as weighed" }, 90) // 0.765 %
 */
export function asCharged(
  given: GivenCharge,
  assay: Percent,
  oil: Oil,
  temperature?: Celsius,
): Outcome<Percent> {
  const share = given.is === "pure" ? pure : assay;
  if (given.unit === "g/L") return chargePercent(given.amount, share, oil, temperature);
  return as("%", given.amount.times(share).div(hundred));
}

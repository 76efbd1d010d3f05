/** Catalyst for many batch sizes and acid values at once. */
import type { Exact } from "../exact/exact";
import { type AcidValue, type Gram, type Kilogram, type Percent } from "../quantity/quantity";
import type { AmountUnit } from "../quantity/units";
import { isProblem, type Outcome, type Problem } from "../problem/problem";
import type { Base } from "../reference/bases";
import type { Oil } from "../reference/oils";
import { catalyst } from "./catalyst";
import { oilMass } from "./oil-mass";

export interface WhatIf {
  readonly amounts: readonly Exact[];
  readonly unit: AmountUnit;
  readonly acidValues: readonly AcidValue[];
  readonly base: Base;
  readonly assay: Percent;
  readonly baseCharge: Percent;
  readonly oil: Oil;
  readonly limitFfa: Percent;
}

/**
 * @returns a row for each amount, in it a dose (g as weighed) for each acid value, or the problem of
 * one above the limit
 */
export function whatIf(question: WhatIf): Outcome<(Gram | Problem)[][]> {
  const { amounts, unit, acidValues, base, assay, baseCharge, oil, limitFfa } = question;
  const masses: Kilogram[] = [];
  for (const amount of amounts) {
    const mass = oilMass(amount, unit, oil);
    if (isProblem(mass)) return mass;
    masses.push(mass);
  }
  return masses.map((mass) =>
    acidValues.map((value) => catalyst(mass, value, base, assay, baseCharge, limitFfa)),
  );
}

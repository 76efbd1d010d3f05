/** Every dose of a question, worked out as its formulas will work it out. */
import { unlimitedCatalyst, withinAcidLimit } from "../../core/batch/catalyst";
import { oilMass } from "../../core/batch/oil-mass";
import { exact } from "../../core/exact/exact";
import { as, type Gram, type Kilogram } from "../../core/quantity/quantity";
import { isProblem, type Outcome, type Problem } from "../../core/problem/problem";
import type { WhatIfQuestion } from "./question";

export interface Doses {
  /** Oil of each size. */
  readonly masses: readonly Kilogram[];
  /** A row for each size, in it a dose for each column, or why there is none. */
  readonly rows: readonly (readonly (Gram | Problem)[])[];
}

/** A mass as its cell will hold it: the doses are worked out from the cell. */
const asInCell = (mass: Kilogram): Kilogram => as("kg", exact(mass.toNumber()));

/** @returns a problem when a size cannot be turned into a mass: a solid fat, too much oil */
export function dosesOf(question: WhatIfQuestion): Outcome<Doses> {
  const { sizes, unit, oil, temperature, columns, limitFfa } = question;
  const masses: Kilogram[] = [];
  for (const size of sizes) {
    const mass = oilMass(size, unit, oil, temperature);
    if (isProblem(mass)) return mass;
    masses.push(asInCell(mass));
  }
  const allowed = columns.map(({ acid }) => withinAcidLimit(acid.value, limitFfa));
  const rows = masses.map((mass) =>
    columns.map(({ acid, base, assay, charge }, column) => {
      const value = allowed[column] ?? acid.value;
      return isProblem(value) ? value : unlimitedCatalyst(mass, value, base, assay, charge);
    }),
  );
  return { masses, rows };
}

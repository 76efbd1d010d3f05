/** What the number fields of a draft hold, each judged once. */
import { type Exact, exact } from "../../core/exact/exact";
import { as, type Quantity, type Unit } from "../../core/quantity/quantity";
import { type Judged, judge, type NumberFieldFact } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";

/** As typed, by field; what is left out is empty. */
export type TypedNumbers<Field extends string> = Readonly<Partial<Record<Field, string>>>;

export interface NumberFigures<Field extends string> {
  /** Its label, unit and limits. */
  fact(field: Field): NumberFieldFact;
  judged(field: Field): Judged;
  /** The figure typed there; undefined when it is empty or wrong. */
  value(field: Field): Exact | undefined;
  /** The same, with the unit its caller knows it has. */
  in<U extends Unit>(unit: U, field: Field): Quantity<U> | undefined;
}

/** @param more what a field asks beside its limits */
export function numberFigures<Field extends string>(
  typed: TypedNumbers<Field>,
  fact: (field: Field) => NumberFieldFact,
  mark: DecimalMark,
  more: (field: Field, judged: Judged) => Judged = (_, judged) => judged,
): NumberFigures<Field> {
  const judged = (field: Field): Judged =>
    more(field, judge(typed[field] ?? "", fact(field), mark));
  const value = (field: Field): Exact | undefined => {
    const found = judged(field);
    return found.kind === "figure" ? found.value : undefined;
  };
  return {
    fact,
    judged,
    value,
    in: (unit, field) => {
      const found = value(field);
      return found && as(unit, found);
    },
  };
}

/**
 * A figure as a cell will hold it. The pane works with these, so that what it shows is what the row's
 * formulas will show.
 */
export const asInCell = <U extends Unit>(unit: U, value: Exact): Quantity<U> =>
  as(unit, exact(value.toNumber()));

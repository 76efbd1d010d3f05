/** What the number fields of a draft hold, each judged once. */
import { type Exact, exact } from "../../core/exact/exact";
import { as, type Quantity, type Unit } from "../../core/quantity/quantity";
import { judge, type Judged } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { numberFields, type NumberFieldId } from "./fields";

export interface Figures {
  judged(field: NumberFieldId): Judged;
  /** The figure typed there; undefined when it is empty or wrong. */
  value(field: NumberFieldId): Exact | undefined;
  /** The same, with the unit its caller knows it has. */
  in<U extends Unit>(unit: U, field: NumberFieldId): Quantity<U> | undefined;
}

export function figuresOf(draft: Draft, mark: DecimalMark): Figures {
  const judged = (field: NumberFieldId): Judged =>
    judge(draft.typed[field] ?? "", numberFields[field], mark);
  const value = (field: NumberFieldId): Exact | undefined => {
    const found = judged(field);
    return found.kind === "figure" ? found.value : undefined;
  };
  return {
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

/** What the number fields of a batch hold, each judged once. */
import type { Exact } from "../../core/exact/exact";
import { as, type Quantity, type Unit } from "../../core/quantity/quantity";
import { judge, type Judged, type NumberFieldFact } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { numberFields, type NumberFieldId } from "./fields";
import { unitNames } from "./names";

export interface Figures {
  judged(field: NumberFieldId): Judged;
  /** The figure typed there; undefined when it is empty or wrong. */
  value(field: NumberFieldId): Exact | undefined;
  /** The same, with the unit its caller knows it has. */
  in<U extends Unit>(unit: U, field: NumberFieldId): Quantity<U> | undefined;
  /** What is typed as a lot's share of the mass. */
  share(lot: string): Judged;
}

/** A field's fact; the amount has the unit that was picked. */
export const factOf = (draft: Draft, field: NumberFieldId): NumberFieldFact =>
  field === "amount"
    ? { ...numberFields.amount, unit: unitNames[draft.picked.unit] }
    : numberFields[field];

export function figuresOf(draft: Draft, mark: DecimalMark): Figures {
  const judged = (field: NumberFieldId): Judged =>
    judge(draft.typed[field] ?? "", factOf(draft, field), mark);
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
    share: (lot) =>
      judge(draft.lots.find((each) => each.lot === lot)?.share ?? "", numberFields.share, mark),
  };
}

/** What the fields of a draft hold, each judged once. */
import type { Exact } from "../../core/exact/exact";
import { as, type Quantity, type Unit } from "../../core/quantity/quantity";
import { judge, type Judged, type NumberFieldFact } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft, ListId } from "./draft";
import { lists, numberFields, type NumberFieldId } from "./fields";
import { type JudgedList, judgeList } from "./list";
import { unitNames } from "./names";
import { mostSizes } from "./sizes";

export interface Figures {
  judged(field: NumberFieldId): Judged;
  /** The figure typed there; undefined when it is empty or wrong. */
  value(field: NumberFieldId): Exact | undefined;
  /** The same, with the unit its caller knows it has. */
  in<U extends Unit>(unit: U, field: NumberFieldId): Quantity<U> | undefined;
  list(id: ListId): JudgedList;
}

export const mostColumns = 50;

/** A field's fact; sizes have the unit that was picked. */
export function factOf(draft: Draft, field: NumberFieldId): NumberFieldFact {
  const isSize = field === "from" || field === "to" || field === "step";
  const fact = numberFields[field];
  return isSize ? { ...fact, unit: unitNames[draft.picked.unit] } : fact;
}

export const listFactOf = (draft: Draft, id: ListId): NumberFieldFact =>
  id === "sizes" ? { ...lists.sizes, unit: unitNames[draft.picked.unit] } : lists[id];

/** A cell that holds 0 counts as empty, and so as 20 C. */
const noZero = (found: Judged): Judged =>
  found.kind === "figure" && found.value.isZero()
    ? {
        kind: "wrong",
        sentence: "Oil measured at: a cell with 0 counts as empty, so type 0.01 for 0 °C.",
        mayBecomeRight: true,
      }
    : found;

export function figuresOf(draft: Draft, mark: DecimalMark): Figures {
  const judged = (field: NumberFieldId): Judged => {
    const found = judge(draft.typed[field] ?? "", factOf(draft, field), mark);
    return field === "temperature" ? noZero(found) : found;
  };
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
    list: (id) =>
      judgeList(
        draft.lists[id],
        listFactOf(draft, id),
        mark,
        id === "sizes" ? mostSizes : mostColumns,
      ),
  };
}

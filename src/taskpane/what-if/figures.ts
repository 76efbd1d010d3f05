/** What the fields of a draft hold, each judged once. */
import { type NumberFigures, numberFigures } from "../fields/number-figures";
import { unitNames } from "../fields/units";
import type { Judged, NumberFieldFact } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import type { ListId } from "./fields";
import { lists, numberFields, type NumberFieldId, mostColumns, mostSizes } from "./fields";
import { type JudgedList, judgeList } from "./list";

export interface Figures extends NumberFigures<NumberFieldId> {
  list(id: ListId): JudgedList;
}

/** A field's fact; sizes have the unit that was picked. */
function factOf(draft: Draft, field: NumberFieldId): NumberFieldFact {
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
        sentence: `${numberFields.temperature.label}: a cell with 0 counts as empty, so type 0.01 for 0 °C.`,
        mayBecomeRight: true,
      }
    : found;

export const figuresOf = (draft: Draft, mark: DecimalMark): Figures => ({
  ...numberFigures<NumberFieldId>(
    draft.typed,
    (field) => factOf(draft, field),
    mark,
    (field, found) => (field === "temperature" ? noZero(found) : found),
  ),
  list: (id) =>
    judgeList(
      draft.lists[id],
      listFactOf(draft, id),
      mark,
      id === "sizes" ? mostSizes : mostColumns,
    ),
});

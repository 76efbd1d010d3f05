/** What the number fields of a batch hold, and the shares of its lots. */
import { isProblem } from "../../core/problem/problem";
import { as } from "../../core/quantity/quantity";
import { limits } from "../../core/reference/limits";
import { type NumberFigures, numberFigures } from "../fields/number-figures";
import { unitNames } from "../fields/units";
import { waterFound } from "../water/found";
import { judge, type Judged, type NumberFieldFact } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { numberFields, type NumberFieldId, shareField } from "./fields";

export interface Figures extends NumberFigures<NumberFieldId> {
  /** What is typed as a lot's share of the mass. */
  share(lot: string): Judged;
}

export function figuresOf(draft: Draft, mark: DecimalMark): Figures {
  /** The amount has the unit that was picked. */
  const fact = (field: NumberFieldId): NumberFieldFact => {
    if (field === "amount") return { ...numberFields.amount, unit: unitNames[draft.picked.unit] };
    return field === "mostAcid" && draft.picked.mostAcidIn === "acid value"
      ? { ...numberFields.mostAcid, unit: limits.acidValue.unit, limit: limits.acidValue }
      : numberFields[field];
  };
  const typed = numberFigures(draft.typed, fact, mark);
  /** The water of the oil, typed or measured: one figure for all that ask for it. */
  const water = () => {
    const found = waterFound(draft.picked.waterBy, typed);
    return found === undefined || isProblem(found) ? undefined : found;
  };
  return {
    ...typed,
    value: (field) => (field === "water" ? water() : typed.value(field)),
    in: (unit, field) => {
      const found = field === "water" ? water() : typed.value(field);
      return found && as(unit, found);
    },
    share: (lot) =>
      judge(draft.lots.find((each) => each.lot === lot)?.share ?? "", shareField, mark),
  };
}

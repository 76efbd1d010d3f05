/** A fuel seen whole: what was typed, what follows from it, what is wanted. Worked out, never kept. */
import type { FuelRecord } from "../../workbook/record/fuel-record";
import { numberFigures } from "../fields/number-figures";
import { unitNames } from "../fields/units";
import type { NumberFieldFact } from "../widgets/judged";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { numberFields, type NumberFieldId } from "./fields";
import { recordOf } from "./record";
import { type Seen, wanted, type Want } from "./wants";
import { workingOf } from "./working";

export interface View extends Seen {
  readonly record: FuelRecord;
  readonly wants: readonly Want[];
  readonly mark: DecimalMark;
}

export function viewOf(draft: Draft, mark: DecimalMark, today: string): View {
  const fact = (field: NumberFieldId): NumberFieldFact =>
    field === "litres"
      ? { ...numberFields.litres, unit: unitNames[draft.picked.madeIn] }
      : numberFields[field];
  const figures = numberFigures(draft.typed, fact, mark);
  const record = recordOf(draft, figures, today);
  const seen: Seen = { draft, figures, working: workingOf(record, draft.picked.washed) };
  return { ...seen, record, wants: wanted(seen), mark };
}

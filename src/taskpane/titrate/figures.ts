/** What the number fields of a titration hold. */
import { type NumberFigures, numberFigures } from "../fields/number-figures";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { numberFields, type NumberFieldId } from "./fields";

export type Figures = NumberFigures<NumberFieldId>;

export const figuresOf = (draft: Draft, mark: DecimalMark): Figures =>
  numberFigures<NumberFieldId>(draft.typed, (field) => numberFields[field], mark);

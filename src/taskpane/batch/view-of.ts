/** A batch seen whole: what was typed, what follows from it, what is wanted. Worked out, never kept. */
import type { RecordedLot } from "../../workbook/planning/read-lots";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { figuresOf } from "./figures";
import type { Seen } from "./seen";
import { wanted, type Want } from "./wants";
import { workingOf } from "./working";

export interface View extends Seen {
  readonly wants: readonly Want[];
}

export function viewOf(draft: Draft, mark: DecimalMark, recorded: readonly RecordedLot[]): View {
  const figures = figuresOf(draft, mark);
  const seen: Seen = {
    draft,
    figures,
    working: workingOf(draft, figures, recorded),
    recorded,
    mark,
  };
  return { ...seen, wants: wanted(seen) };
}

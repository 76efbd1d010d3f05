/** A draft seen whole: what was typed, what follows from it, what is wanted. Worked out, never kept. */
import type { OnRecord } from "../../workbook/planning/read-titrations";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { figuresOf } from "./figures";
import type { Seen } from "./nudges/nudge";
import { wanted, type Want } from "./progress";
import { workingOf } from "./working";

export interface View extends Seen {
  readonly wants: readonly Want[];
}

/** @param record the titrations in the workbook; undefined while nobody has read them */
export function viewOf(draft: Draft, mark: DecimalMark, today: string, record?: OnRecord): View {
  const figures = figuresOf(draft, mark);
  const working = workingOf(draft, figures, record);
  const seen: Seen = { draft, figures, working, today, mark };
  return { ...seen, wants: wanted(seen) };
}

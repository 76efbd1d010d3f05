/** A draft seen whole: what was typed, what follows from it, what is wanted. Worked out, never kept. */
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { figuresOf } from "./figures";
import type { Seen } from "./nudges/nudge";
import { wanted, type Want } from "./progress";
import { workingOf } from "./working";

export interface View extends Seen {
  readonly wants: readonly Want[];
}

export function viewOf(draft: Draft, mark: DecimalMark, today: string): View {
  const figures = figuresOf(draft, mark);
  const seen: Seen = { draft, figures, working: workingOf(draft, figures), today, mark };
  return { ...seen, wants: wanted(seen) };
}

/** The last acts on the readings can be taken back one by one: adding, changing, omitting. */
import type { Draft, Reading, ReadingList } from "./draft";
import { type Action, reduce } from "./reducer";

export interface Before {
  /** What undoing does: "Take back titre 3". */
  readonly what: string;
  readonly list: ReadingList;
  readonly titres: readonly Reading[];
  readonly blanks: readonly Reading[];
}

export interface Bench {
  readonly draft: Draft;
  /** Latest last. Kept while the pane is open; the draft itself is kept longer. */
  readonly past: readonly Before[];
}

export type BenchAction =
  Action | { readonly do: "undo" } | { readonly do: "take-up"; draft: Draft };

const mostKept = 20;

const called = (list: ReadingList, index: number): string =>
  `${list === "titres" ? "titre" : "blank"} ${index + 1}`;

/** What an action does to the readings, in words; undefined when it leaves them alone. */
function whatIsDone(draft: Draft, action: Action): Pick<Before, "what" | "list"> | undefined {
  const done = (list: ReadingList, index: number, before: string, after = "") => ({
    what: `${before} ${called(list, index)}${after}`,
    list,
  });
  switch (action.do) {
    case "add":
      return done(action.list, draft[action.list].length, "Take back");
    case "change":
      return done(action.list, action.index, "Take back the change of");
    case "remove-blank":
      return done("blanks", action.index, "Put", " back");
    case "omit":
      return done("titres", action.index, "Put", " back");
    case "put-back":
      return done("titres", action.index, "Leave", " out again");
    default:
      return undefined;
  }
}

export const benchWith = (draft: Draft): Bench => ({ draft, past: [] });

export function step(bench: Bench, action: BenchAction): Bench {
  if (action.do === "take-up") return benchWith(action.draft);
  if (action.do === "undo") {
    const last = bench.past.at(-1);
    if (last === undefined) return bench;
    const { titres, blanks } = last;
    return {
      draft: { ...bench.draft, titres, blanks, isRecorded: false },
      past: bench.past.slice(0, -1),
    };
  }
  const draft = reduce(bench.draft, action);
  const done = whatIsDone(bench.draft, action);
  if (done === undefined || draft === bench.draft) return { ...bench, draft };
  const { titres, blanks } = bench.draft;
  return { draft, past: [...bench.past, { ...done, titres, blanks }].slice(-mostKept) };
}

/** Writes the formulas of waiting cells again, a bounded number of times, and looks what became of it. */
import { type Fault, type Host, isFault, type Step } from "../../sheet/port";
import { type Search, searchUnanswered } from "./search";
import type { Unanswered } from "./unanswered";

/** More tries than this never helped anybody. */
export const mostTries = 3;

/** More cells than this are asked at the next press: the program is not kept busy for minutes. */
export const mostAtOnce = 5_000;

export interface Healing {
  /** How many cells were asked. */
  readonly asked: number;
  /** How many more there were to ask. */
  readonly later: number;
  /** What still waits. */
  readonly left: Search;
  readonly tries: number;
}

/** Cells under one another become one block: the fewer, the quicker. */
function stepsFor(cells: readonly Unanswered[]): Step[] {
  const sorted = [...cells].sort(
    ({ block: a }, { block: b }) =>
      a.sheet.localeCompare(b.sheet) || a.column - b.column || a.row - b.row,
  );
  const runs: Unanswered[][] = [];
  for (const cell of sorted) {
    const run = runs.at(-1);
    const above = run?.at(-1)?.block;
    const isBelow =
      above?.sheet === cell.block.sheet &&
      above.column === cell.block.column &&
      above.row + 1 === cell.block.row;
    if (run && isBelow) run.push(cell);
    else runs.push([cell]);
  }
  return runs.flatMap((run) => {
    const [first] = run;
    return first
      ? [
          {
            do: "set-cells" as const,
            block: { ...first.block, rows: run.length },
            contents: run.map(({ formula }) => [{ kind: "formula" as const, formula }]),
          },
        ]
      : [];
  });
}

/** @param pause  lets the program work the cells out before they are looked at again */
export async function heal(host: Host, pause: () => Promise<void>): Promise<Healing | Fault> {
  let left = await searchUnanswered(host);
  if (isFault(left)) return left;
  const asked = Math.min(left.mendable.length, mostAtOnce);
  const later = left.mendable.length - asked;
  let tries = 0;
  while (left.mendable.length > later && tries < mostTries) {
    tries += 1;
    const now = left.mendable.slice(0, mostAtOnce);
    const stopped = await host.write("Ask Titrebook again", stepsFor(now));
    if (isFault(stopped)) return stopped;
    await pause();
    const found = await searchUnanswered(host);
    if (isFault(found)) return found;
    left = found;
  }
  return { asked, later, left, tries };
}

/**
 * Functions of an add-in answer late, and in a program that had not yet loaded them a formula shows
 * #NAME? until it is written again. Wait for the first, write the second again, a few times at most.
 */
import { type Cells, type Fault, type Host, isFault, type Step } from "../../sheet/port";
import { asked } from "./asked";
import type { Plan, PlannedCell } from "./plan";
import { errorIn } from "./record/verify-record";

const mostTries = 3;

/** Waits a moment; the caller has the clock. */
export type Pause = () => Promise<void>;

const written = ({ block, content }: PlannedCell): Step => ({
  do: "set-cells",
  block,
  contents: [[content]],
});

const showing = (plan: Plan, cells: Cells, errors: readonly string[]): PlannedCell[] =>
  plan.cells.filter(
    (cell) => cell.content.kind === "formula" && errors.includes(errorIn(cells, cell)),
  );

export interface Settled {
  readonly cells: Cells | Fault;
  /** Formulas were written again, each time as an undo of its own. */
  readonly isWrittenAgain: boolean;
}

/** Reads until the functions have answered, or as often as it may. */
export async function settled(
  host: Host,
  plan: Plan,
  read: () => Promise<Cells | Fault>,
  pause: Pause | undefined,
): Promise<Settled> {
  let isWrittenAgain = false;
  let cells = await read();
  for (let tries = 0; pause && tries < mostTries && !isFault(cells); tries += 1) {
    const unknown = showing(plan, cells, ["#NAME?"]);
    if (unknown.length === 0 && showing(plan, cells, ["#BUSY!"]).length === 0) break;
    await pause();
    if (unknown.length > 0) {
      isWrittenAgain = true;
      await asked(() => host.write("Ask the functions again", unknown.map(written)));
    }
    cells = await read();
  }
  return { cells, isWrittenAgain };
}

/** Waiting for the engine. */
import type { Injector } from "@univerjs/core";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import type { Failures } from "../engine/steady/failures";

/** Milliseconds that working everything out may take. */
const patience = 180_000;
/** ... and that it may take to find that there is nothing to work out. */
export const soon = 5_000;

/** Waits for what is being worked out; says so where it comes to no end. */
export async function worked(
  injector: Injector,
  failures: Failures,
  progress?: (percent: number) => void,
  most = patience,
): Promise<void> {
  const session = injector.get(FormulaCalculationSessionService);
  const before = session.state.id;
  let said = -1;
  const heard = session.state$.subscribe(({ id, progress: now }) => {
    if (id === before || !now?.totalFormulasToCalculate) return;
    const tenths = Math.floor((10 * now.completedFormulasCount) / now.totalFormulasToCalculate);
    // read out, each of a hundred would be in the way of the next
    if (tenths <= said) return;
    said = tenths;
    progress?.(10 * tenths);
  });
  await session.waitForLatestApplied(most).catch(() => failures.stopped());
  heard.unsubscribe();
}

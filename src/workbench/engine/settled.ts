/** Waiting for the results of the latest change. */
import type { Injector } from "@univerjs/core";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";

/**
 * Milliseconds in which working out begins, or else there is nothing to work out: the engine gathers
 * changes for 100.
 */
const begins = 250;

/** @param most milliseconds it may take; after them it fails */
export const settled = (injector: Injector, most: number): Promise<void> =>
  injector.get(FormulaCalculationSessionService).waitForLatestApplied(most, begins);

/** One conversation with the spreadsheet program. What it throws comes back as a fault. */
import type { Fault } from "../../sheet/port";
import { caught } from "./fault-codes";

/** Several runs are never asked to be one undo: with that option alone the web throws. */
export async function run<T>(
  work: (context: Excel.RequestContext) => Promise<T>,
): Promise<T | Fault> {
  try {
    return await Excel.run({ delayForCellEdit: true }, work);
  } catch (thrown) {
    return caught(thrown);
  }
}

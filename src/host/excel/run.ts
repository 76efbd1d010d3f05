/** One conversation with the spreadsheet program. What it throws comes back as a fault. */
import { fault, type Fault, type FaultCode } from "../../sheet/port";

const faultOf: Record<string, FaultCode> = {
  AccessDenied: "sheet-protected",
  InvalidOperationInCellEditMode: "being-edited",
  ItemAlreadyExists: "name-taken",
  NotImplemented: "not-offered",
  ApiNotFound: "not-offered",
  UnsupportedOperation: "not-offered",
};

/** Its errors name no sheet or table that a person would know. */
export const caught = (thrown: unknown): Fault =>
  fault(faultOf[(thrown as { code?: string } | undefined)?.code ?? ""] ?? "failed");

export async function run<T>(
  work: (context: Excel.RequestContext) => Promise<T>,
  options: Excel.RunOptions = {},
): Promise<T | Fault> {
  try {
    return await Excel.run({ delayForCellEdit: true, ...options }, work);
  } catch (thrown) {
    return caught(thrown);
  }
}

/** What the spreadsheet program throws, by its codes, as a fault of ours; the words are in `workbook/planning/fault-wording.ts`. */
import { fault, type Fault, type FaultCode } from "../../sheet/port";

const faultOf: Record<string, FaultCode> = {
  AccessDenied: "sheet-protected",
  InvalidOperationInCellEditMode: "being-edited",
  ItemAlreadyExists: "name-taken",
  NotImplemented: "not-offered",
  ApiNotFound: "not-offered",
  ApiNotAvailable: "not-offered",
  UnsupportedOperation: "not-offered",
  UnsupportedFeature: "not-offered",
  UndoNotSupported: "not-undoable",
  RequestPayloadSizeLimitExceeded: "too-large",
  ResponsePayloadSizeLimitExceeded: "too-large",
  ActivityLimitReached: "busy",
  RequestAborted: "busy",
  ServiceNotAvailable: "busy",
};

export const codeOf = (thrown: unknown): string =>
  (thrown as { code?: string } | undefined)?.code ?? "";

/** Its errors name no sheet or table that a person would know. */
export const caught = (thrown: unknown): Fault => fault(faultOf[codeOf(thrown)] ?? "failed");

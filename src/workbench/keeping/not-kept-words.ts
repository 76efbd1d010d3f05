/** Why the browser did not keep the workbook, and what to do, in a sentence. */
import { isObject } from "../../taskpane/drafts/believed";

const isFull = (error: unknown): boolean =>
  isObject(error) && (error as { name?: unknown }).name === "QuotaExceededError";

export const notKeptWords = (name: string, error: unknown): string =>
  isFull(error)
    ? `${name} could not be kept in this browser: it gives this page no more room. Save it in a file; under Open you can forget others.`
    : `${name} could not be kept in this browser, which keeps nothing for this page. Save it in a file before you leave.`;

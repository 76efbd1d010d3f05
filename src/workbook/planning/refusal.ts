/** Why nothing is planned or done: a sentence of ours, or a fault of the host in words that say what to do. */
import type { Fault } from "../../sheet/port";
import { refused } from "../../sheet/refusal";
import { faultSentence } from "./fault-wording";
import type { Refusal } from "./plan";

export const refusal = (found: Fault): Refusal =>
  found.code === "half-done"
    ? { ...refused(faultSentence(found)), isHalfDone: true }
    : refused(faultSentence(found));

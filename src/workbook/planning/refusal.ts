/** A fault of the host as a refusal that says what to do. */
import type { Fault } from "../../sheet/port";
import { faultSentence } from "./fault-wording";
import type { Refusal } from "./plan";

export const refusal = (found: Fault): Refusal => ({
  kind: "refused",
  code: found.code,
  sentence: faultSentence(found),
});

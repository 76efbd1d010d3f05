/** What the steps are called. */
import type { StepId } from "./draft";

export const stepNames: Record<StepId, string> = {
  oil: "Oil",
  lye: "Lye",
  methanol: "Methanol",
  "weigh-out": "Weigh-out",
  record: "Record",
};

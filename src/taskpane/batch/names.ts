/** What the steps are called, and the work in hand at each: whose cautions are shown. */
import type { Work } from "../../core/batch/cautions";
import type { StepId } from "./draft";
import type { Working } from "./working";

export const stepNames: Record<StepId, string> = {
  oil: "Oil",
  lye: "Lye",
  methanol: "Methanol",
  "weigh-out": "Weigh-out",
  record: "Record",
};

const works: Record<StepId, Work> = {
  oil: "heating",
  lye: "mixing",
  methanol: "mixing",
  "weigh-out": "dosing",
  record: "draining",
};

/** Where the route asks for an acid step first, that is what will be weighed out. */
export const workOf = (step: StepId, { acidStep }: Pick<Working, "acidStep">): Work =>
  step === "weigh-out" && acidStep?.advised === "first" ? "acid step" : works[step];

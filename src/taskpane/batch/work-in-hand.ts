/** The work in hand at each step: whose cautions are shown. */
import type { Work } from "../../core/batch/cautions";
import type { StepId } from "./batch";
import type { Working } from "./working";

const works: Record<StepId, Work> = {
  oil: "heating",
  lye: "mixing",
  methanol: "methanol",
  "weigh-out": "dosing",
  record: "draining",
};

/** Where the route asks for an acid step first, that is what will be weighed out. */
export const workOf = (step: StepId, { acidStep }: Pick<Working, "acidStep">): Work =>
  step === "weigh-out" && acidStep?.advised === "first" ? "acid step" : works[step];

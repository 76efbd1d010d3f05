/** The what-if task, as far as it is said rather than done: its steps, fields and picks. */
import type { SteppedTask, StepOf } from "../stepped/entered";
import { numberFields } from "./fields";
import { picks } from "./picks";

export const whatIf = {
  label: "Steps of the what-if table",
  steps: { sizes: "Sizes", compare: "Compare", table: "Table", write: "Write" },
  fields: numberFields,
  picks,
  words: {},
} as const satisfies SteppedTask;

export type StepId = StepOf<typeof whatIf>;

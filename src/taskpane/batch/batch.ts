/** The batch task, as far as it is said rather than done: its steps, fields, picks and words. */
import type { SteppedTask, StepOf } from "../stepped/entered";
import { numberFields } from "./fields";
import { picks } from "./picks";

export const batch = {
  label: "Steps of the batch",
  steps: {
    oil: "Oil",
    lye: "Lye",
    methanol: "Methanol",
    "weigh-out": "Weigh-out",
    record: "Record",
  },
  fields: numberFields,
  picks,
  words: {
    batch: { label: "Batch", hint: "Its number in your logbook.", isNeeded: true },
    lyeLot: { label: "Lye lot", hint: "From its label.", isKept: true },
    note: { label: "Note" },
  },
} as const satisfies SteppedTask;

export type StepId = StepOf<typeof batch>;

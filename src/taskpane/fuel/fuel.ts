/** The fuel task, as far as it is said rather than done: its steps, fields, picks and words. */
import type { SteppedTask, StepOf } from "../stepped/entered";
import { numberFields } from "./fields";
import { picks } from "./picks";

export const fuel = {
  label: "Steps of the fuel",
  steps: {
    batch: "Batch",
    acid: "Acid value",
    soap: "Soap and base",
    water: "Water and trial",
    meaning: "What it means",
    record: "Record",
  },
  fields: numberFields,
  picks,
  words: {
    batch: { label: "Batch", hint: "Its number in your logbook." },
    note: { label: "Note" },
    /** Where the trial was said before, in a sentence; it goes once another answer is picked. */
    trialFrom: { label: "Where the trial is from" },
  },
} as const satisfies SteppedTask;

export type StepId = StepOf<typeof fuel>;

/** The titration task, as far as it is said rather than done: its steps, fields, picks and words. */
import type { SteppedTask, StepOf } from "../stepped/entered";
import { numberFields } from "./fields";
import { picks } from "./picks";

/** Asked for when the row is recorded; each is a column of it, in this order. */
const rowWords = {
  operator: { label: "Who titrated", isKept: true },
  note: { label: "Note" },
} as const;
export const rowWordIds = Object.keys(rowWords) as (keyof typeof rowWords)[];

export const titration = {
  label: "Steps of the titration",
  steps: {
    titrant: "Titrant",
    oil: "Oil",
    blank: "Blank",
    replicates: "Replicates",
    result: "Result",
    record: "Record",
  },
  fields: numberFields,
  picks,
  words: {
    lot: { label: "Lot", hint: "As it is marked on the drum.", isNeeded: true },
    ...rowWords,
    /** Day the titrant was made or last checked, 2026-09-30. */
    checkedOn: { label: "Made or checked on", type: "date", isKept: true },
    bottle: {
      label: "Bottle",
      hint: "As it is marked. A fresh one gets a new mark.",
      isKept: true,
    },
    /** A pair of mL and pH or mV a line, as typed or pasted. */
    probe: { label: "Readings of the probe" },
    /** Those that were put in, and the number of the titre they became. */
    probePut: { label: "Readings put in" },
    probeTitre: { label: "Titre of these readings" },
    /** In the words of the tables, where the strength was taken from Titrants. */
    howKnown: { label: "How known", isKept: true },
  },
} as const satisfies SteppedTask;

export type StepId = StepOf<typeof titration>;

/** Over the titrations that the pane keeps, and on the button to them: a sheet is called Lots as well. */
export const keptTitrations = "Earlier titrations";

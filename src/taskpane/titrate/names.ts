/** What the steps and the choices are called. */
import type { Draft, StepId, StrengthWay } from "./draft";

export const stepNames: Record<StepId, string> = {
  titrant: "Titrant",
  oil: "Oil",
  blank: "Blank",
  replicates: "Replicates",
  result: "Result",
  record: "Record",
};

export const ways: readonly (readonly [StrengthWay, string])[] = [
  ["molarity", "mol/L, from its label"],
  ["normality", "Normality, from its label"],
  ["gramsPerLitre", "g/L of lye"],
  ["percent", "% w/v of lye"],
  ["weighed", "Lye weighed and made up"],
  ["phthalate", "Checked against KHP"],
  ["certified", "Certificate"],
];

export const stages: readonly (readonly [Draft["picked"]["stage"], string])[] = [
  ["as received", "As received"],
  ["dried", "Dried"],
  ["after acid step", "After acid step"],
  ["blend", "Blend"],
];

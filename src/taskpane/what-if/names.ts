/** What the steps and the choices are called. */
import type { Compared } from "../../workbook/what-if/question";
import type { StepId } from "./draft";

export const stepNames: Record<StepId, string> = {
  sizes: "Sizes",
  compare: "Compare",
  table: "Table",
  write: "Write",
};

export const comparedChoices: readonly (readonly [Compared, string])[] = [
  ["acid", "Acid values"],
  ["assay", "Assays"],
  ["charge", "Base charges"],
  ["base", "Bases"],
];

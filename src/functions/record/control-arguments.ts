/** The arguments CONTROL and CONTROLFLAGS share. */
import { limits } from "../../core/reference/limits";
import { list, optionalNumber, optionalWhole } from "../arguments";

export const controlArguments = {
  values: list(
    limits.controlValue,
    "value",
    "Single values in the order of time: blanks, strengths, a kept check oil.",
  ),
  baseline: optionalWhole(
    limits.baseline,
    "all of them",
    "How many first values set the centre and the limits.",
  ),
  step: optionalNumber(
    limits.controlStep,
    "the coarsest usual step that fits all values as typed",
    undefined,
    "The smallest difference the values are read to.",
  ),
};

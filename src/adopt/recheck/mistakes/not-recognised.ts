import { mistake, noWays } from "./mistake";

export const notRecognised = mistake({
  id: "not-recognised",
  name: "Differs, cause not recognised",
  sentence:
    "The figure does not follow from the row's readings, and none of the known mistakes gives it.",
  ways: noWays,
});

import { isDose, mistake } from "./mistake";

export const assayMultiplied = mistake({
  id: "assay-multiplied",
  name: "Multiplied by the assay instead of divided",
  sentence: "The pure amount is multiplied by the assay. Dividing by it gives what to weigh.",
  ways: (role, { assay }) =>
    isDose(role) && assay !== undefined && assay < 99.5
      ? [{ weighing: (percent) => percent / 100 }]
      : [],
});

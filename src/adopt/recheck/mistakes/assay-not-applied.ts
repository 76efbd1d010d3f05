import { isDose, mistake } from "./mistake";

export const assayNotApplied = mistake({
  id: "assay-not-applied",
  name: "Assay of the lye not applied",
  sentence: "The figure is for pure lye; what is weighed is less than pure, so more is needed.",
  ways: (role, { assay }) =>
    isDose(role) && assay !== undefined && assay < 99.5 ? [{ weighing: () => 1 }] : [],
  shows: ({ roles }) => !roles.has("assay"),
});

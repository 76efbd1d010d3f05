import { isOfTitre, mistake } from "./mistake";

export const blankAdded = mistake({
  id: "blank-added",
  name: "Blank added instead of subtracted",
  sentence: "The blank is added to the titre; it should be taken off.",
  ways: (role, { blanks = [] }) =>
    isOfTitre(role) && blanks.length > 0 ? [{ lessBlank: (titre, blank) => titre + blank }] : [],
});

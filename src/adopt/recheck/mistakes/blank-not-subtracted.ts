import { isOfTitre, mistake } from "./mistake";

export const blankNotSubtracted = mistake({
  id: "blank-not-subtracted",
  name: "Blank not subtracted",
  sentence: "What the solvent alone uses is counted as acid of the oil.",
  ways: (role, { blanks = [] }) =>
    isOfTitre(role) && blanks.length > 0 ? [{ lessBlank: (titre) => titre }] : [],
  shows: ({ roles }) => !roles.has("blank") && (roles.has("titre") || roles.has("meanTitre")),
  sleepsIn: ["correctedTitre"],
  isSmall: true,
});

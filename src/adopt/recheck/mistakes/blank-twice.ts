import { isOfTitre, mistake } from "./mistake";

export const blankTwice = mistake({
  id: "blank-twice",
  name: "Blank subtracted twice",
  sentence: "The blank is taken off a titre from which it was taken off before.",
  ways: (role, { blanks = [] }) =>
    isOfTitre(role) && blanks.length > 0
      ? [{ lessBlank: (titre, blank) => titre - 2 * blank, net: (net, blank) => net - blank }]
      : [],
});

import { isOfTitre, mistake } from "./mistake";

export const titreLeftOut = mistake({
  id: "titre-left-out",
  name: "One titre left out of the mean",
  sentence:
    "The mean is of the other titres alone. Which titre is left out has to be decided before the result is seen, and written down.",
  ways: (role, { titres, masses }) => {
    const filled = titres.flatMap((titre, at) => (titre === undefined ? [] : [at]));
    const isOne = masses.every((mass) => mass === masses[0]);
    if (filled.length < 3 || !isOne || !(role === "meanTitre" || isOfTitre(role))) return [];
    return filled.map((without) => ({
      mean: (all) =>
        all.reduce<number>((sum, each, at) => sum + (at === without ? 0 : (each ?? 0)), 0) /
        (filled.length - 1),
    }));
  },
  isAlone: true,
});

import { isOfTitre, mistake } from "./mistake";

export const emptyAsZero = mistake({
  id: "empty-as-zero",
  name: "Empty cells averaged as zero",
  sentence: "The sum of the titres is divided by the number of columns, though some were empty.",
  ways: (role, { titres }) =>
    (role === "meanTitre" || isOfTitre(role)) &&
    titres.some((titre) => titre === undefined) &&
    titres.some((titre) => titre !== undefined)
      ? [{ mean: (all) => all.reduce<number>((sum, each) => sum + (each ?? 0), 0) / all.length }]
      : [],
  shows: ({ dividesSumBy }) => dividesSumBy !== undefined,
  sleepsIn: ["meanTitre", "correctedTitre"],
});

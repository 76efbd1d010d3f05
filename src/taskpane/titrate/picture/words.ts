/** The picture of the replicates in words: for the legend under it, and for who listens. */
import type { Band } from "../../../core/replicates/band";
import { digits, fixed } from "../../widgets/shown-number";
import type { Titrated } from "./divisions";
import type { OneDivision } from "./one-division";

const stands: Record<Titrated["mark"], string> = {
  agrees: "",
  suspect: ", apart",
  apart: ", apart",
  omitted: ", omitted",
  "not tested": "",
};

/** "Titres should lie between 2.28 and 2.43 mL." */
export function bandWords({ from, to }: Band, count: number, places: number) {
  const between = `lie between ${fixed(Math.max(0, from), places)} and ${fixed(to, places)} mL`;
  return count === 1 ? `The next titre should ${between}.` : `Titres should ${between}.`;
}

/** "One division, 0.05 mL, is 0.14 % FFA: 26 g of pure KOH in 100 L of oil." */
export function divisionWords({ step, ffa, base, baseName, oil }: OneDivision): string {
  const dose = `${digits(base, 2)} g of pure ${baseName} in ${oil} of oil`;
  return `One division, ${step.toFixed()} mL, is ${digits(ffa, 2)} % FFA: ${dose}.`;
}

/** "Titre 1 2.30; titre 2 2.40, apart: all in mL." */
export const titresInWords = (titrated: readonly Titrated[], places: number): string =>
  `${titrated.map(({ name, value, mark }) => `${name} ${fixed(value, places)}${stands[mark]}`).join("; ")}, all in mL.`;

/** What a lye or a titrant can be. */
import type { Base } from "../../core/reference/bases";

export const baseChoices: readonly (readonly [Base["name"], string])[] = [
  ["KOH", "KOH, potassium hydroxide"],
  ["NaOH", "NaOH, sodium hydroxide"],
  ["KOCH3", "KOCH3, potassium methoxide"],
  ["NaOCH3", "NaOCH3, sodium methoxide"],
];

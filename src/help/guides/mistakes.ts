/** Popular mistakes: the wrong way beside the right one, both in figures. */
import { type Guide, text } from "./guide";
import { mistakesOfDosing } from "./mistakes-of-dosing";
import { mistakesOfFuel } from "./mistakes-of-fuel";
import { mistakesOfUnits } from "./mistakes-of-units";

export const mistakesPage: Guide = {
  file: "mistakes.html",
  title: "Popular mistakes",
  lead: "Thirteen ways to a wrong dose, and three to misjudge the fuel, each beside the right way, in figures.",
  parts: [
    text(
      "Ten grams of oil, KOH of 0.1 mol/L, a mean titre of 2.45 mL, a blank of 0.15 mL, and a batch of 91.5 kg, where nothing else is said.",
    ),
    { kind: "mistakes", mistakes: [...mistakesOfDosing, ...mistakesOfUnits, ...mistakesOfFuel] },
  ],
};

import { oilMass } from "../../core/batch/oil-mass";
import { amountUnitNames } from "../../core/quantity/units";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { temperature } from "../common";
import { worksheetFunction } from "../define";
import { amountUnit, oil } from "../words";

export const OILMASS = worksheetFunction(
  "OILMASS",
  "Kilograms of oil in an amount given in litres, gallons, kilograms or pounds.",
  {
    amount: number(limits.amount, "amount", "How much oil, in the unit that follows."),
    unit: amountUnit(`${amountUnitNames}. A bare gallon is refused: say which.`),
    oil,
    temperature,
  },
  (given) => oilMass(given.amount, given.unit, given.oil, given.temperature),
  {
    result: "kg",
    equation: "{amount} * {unit} * density({oil}, {temperature})",
    notes: [
      "Used cooking oil below 15 C may be half solid (common practice, no source): warm it until it is clear and stir it, or weigh it.",
      "Where no oil is named it is taken as 0.915 kg/L at 20 C (common practice, no source): measure yours, or weigh it.",
      "For a mass, the oil and its temperature do nothing.",
      "An imperial gallon is 20 % larger than a US gallon. Oil measured at 40 C holds 1.4 % less per litre than at 20 C.",
    ],
    example: { formula: '=TITRE.OILMASS(100,"l",0.915,40)', gives: 90.18 },
    sources: ["codex", "noureddini", "practice", "internationalYard", "imperialGallon"],
  },
);

import { metalInFuel } from "../../core/fuel/in-fuel";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { worksheetFunction } from "../define";
import { freeBase } from "../words";
import { fuelBase } from "./acid-titration";

export const FUELMETAL = worksheetFunction(
  "FUELMETAL",
  "Sodium or potassium in fuel, mg/kg, from its soap and free base: the limit is 5.",
  {
    soap: number(limits.inFuel, "soap", "Soap in the fuel, mg/kg: see FUELSOAP."),
    base: fuelBase,
    catalyst: freeBase,
  },
  (given) => metalInFuel(given.soap, given.base, given.catalyst),
  {
    result: "mg/kg of the base's metal",
    equation: "{soap} * metal / soap({base}) + {catalyst} * metal / {base}",
    notes: [
      "EN 14214 and ASTM D6751 allow 5 mg/kg of sodium and potassium together: 66.2 mg/kg of sodium soap, or 41.0 of potassium soap.",
      "One 0.05 mL step of 0.01 mol/L on 100 g is 1.5 mg/kg of soap: use AGAINSTLIMIT to see whether your titration can tell.",
    ],
    example: { formula: '=TITRE.FUELMETAL(304.44976928,"NaOH")', gives: 22.98976928 },
    sources: ["en14214", "astmD6751", "ciaaw"],
  },
);

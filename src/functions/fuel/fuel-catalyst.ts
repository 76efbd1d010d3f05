import { baseInFuel } from "../../core/fuel/in-fuel";
import { worksheetFunction } from "../define";
import { acidTitrationArguments } from "./acid-titration";

export const FUELCATALYST = worksheetFunction(
  "FUELCATALYST",
  "Free base left in fuel, mg/kg, by hydrochloric acid to the first end point.",
  acidTitrationArguments,
  ({ titres, base, ...given }) => baseInFuel({ ...given, titres: titres.filled }, base),
  {
    result: "mg/kg, as the base",
    equation: "(mean({titres}) - mean({blanks})) * {molarity} * {base} * 1000 / {sampleMass}",
    notes: [
      "The first end point: phenolphthalein goes from pink to colourless. Where it stays colourless from the start there is none to be found: leave catalyst out in FUELMETAL.",
      "The same flask then goes on to the second end point: FUELSOAP.",
    ],
    example: {
      formula: '=TITRE.FUELCATALYST({0.4},"neutralised",0.01,6,"KOH")',
      gives: 37.4035333,
    },
    sources: ["aocsCc17", "nrel36240", "ciaaw"],
  },
);

import { caution } from "../../core/batch/cautions";
import { soapInFuel } from "../../core/fuel/in-fuel";
import { worksheetFunction } from "../define";
import { acidTitrationArguments } from "./acid-titration";

export const FUELSOAP = worksheetFunction(
  "FUELSOAP",
  "Soap left in fuel, mg/kg, by hydrochloric acid to the second end point.",
  acidTitrationArguments,
  ({ titres, base, ...given }) => soapInFuel({ ...given, titres: titres.filled }, base),
  {
    result: "mg/kg, as oleate of the base's metal",
    equation: "(mean({titres}) - mean({blanks})) * {molarity} * soap({base}) * 1000 / {sampleMass}",
    notes: [
      "The acid is weak: 0.01 mol/L. 100 g of washed fuel or 6 to 10 g of unwashed in 2-propanol or acetone with 2 % of water; bromophenol blue turns from blue to yellow. Only what is taken after the first end point counts here.",
      "Typing 0.1 for 0.01 mol/L makes ten times the soap: some notes print 0.1.",
      "All soap counts as oleate, and carbonate counts too.",
      caution("bench"),
    ],
    example: { formula: '=TITRE.FUELSOAP({0.2},"neutralised",0.01,100,"NaOH")', gives: 6.0889954 },
    sources: ["aocsCc17", "nrel36240", "ciaaw"],
  },
);

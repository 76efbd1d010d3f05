import { soap } from "../../core/batch/soap";
import { acidValue, oilMass } from "../common";
import { worksheetFunction } from "../define";
import { base } from "../words";

export const SOAP = worksheetFunction(
  "SOAP",
  "Kilograms of soap that neutralising the acid makes.",
  { oilMass, acidValue, base: base("The base of the lye.") },
  (given) => soap(given.oilMass, given.acidValue, given.base),
  {
    result: "kg, as oleate of the base's metal",
    equation: "{oilMass} * {acidValue} / 56.1 * soap({base}) / 1000",
    notes: [
      "Soap from the acid alone. Base that meets water makes more, out of the oil itself.",
      "Soap keeps glycerol and biodiesel from parting: above about 5 % FFA (commonly cited) a plain base batch may not settle.",
    ],
    example: { formula: '=TITRE.SOAP(100,5.61,"KOH")', gives: 3.205583 },
    sources: ["ciaaw"],
  },
);

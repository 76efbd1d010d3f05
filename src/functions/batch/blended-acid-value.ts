import { blendedAcidValue } from "../../core/batch/blend";
import { isProblem } from "../../core/problem/problem";
import { limits } from "../../core/reference/limits";
import { list } from "../arguments";
import { worksheetFunction } from "../define";
import { pairLists } from "../pairing";

export const BLENDEDACIDVALUE = worksheetFunction(
  "BLENDEDACIDVALUE",
  "Acid value of several lots mixed, mg KOH/g.",
  {
    acidValues: list(limits.acidValue, "acid value", "Acid value of each lot, mg KOH/g."),
    masses: list(limits.lotMass, "mass", "Mass of each lot, in the same order, kg."),
  },
  (given) => {
    const lots = pairLists(
      given.acidValues,
      given.masses,
      { first: "acid value", second: "mass", advice: "give one mass for each lot" },
      ["acidValues", "masses"],
    );
    if (isProblem(lots)) return lots;
    return blendedAcidValue(lots.filter((lot) => lot !== null));
  },
  {
    result: "mg KOH/g",
    equation: "sum({acidValues} * {masses}) / sum({masses})",
    notes: ["Acid values and masses pair by position. Titrate the blend before dosing it."],
    example: { formula: "=TITRE.BLENDEDACIDVALUE({10,1},{100,200})", gives: 4 },
    sources: ["byHand"],
  },
);

import { blend } from "../../core/batch/blend";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { worksheetFunction } from "../define";

export const BLEND = worksheetFunction(
  "BLEND",
  "Mass fraction of lot A (0 to 1) in a blend of two lots that meets a target acid value.",
  {
    acidValueA: number(limits.acidValue, "acid value of lot A", "Acid value of lot A, mg KOH/g."),
    acidValueB: number(limits.acidValue, "acid value of lot B", "Acid value of lot B, mg KOH/g."),
    targetAcidValue: number(limits.acidValue, "target", "The acid value you want, mg KOH/g."),
  },
  (given) => blend(given.acidValueA, given.acidValueB, given.targetAcidValue),
  {
    result: "mass fraction of lot A, 0 to 1",
    equation: "({targetAcidValue} - {acidValueB}) / ({acidValueA} - {acidValueB})",
    notes: ["By mass, not by volume. Titrate the blend before dosing it."],
    example: { formula: "=TITRE.BLEND(10,2,4)", gives: 0.25 },
    sources: ["byHand"],
  },
);

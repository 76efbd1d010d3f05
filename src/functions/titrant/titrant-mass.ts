import { caution } from "../../core/batch/cautions";
import { limits } from "../../core/reference/limits";
import { titrantMass } from "../../core/titration/titrant";
import { number } from "../arguments";
import { assayPercent, molarity } from "../common";
import { worksheetFunction } from "../define";
import { base } from "../words";

export const TITRANTMASS = worksheetFunction(
  "TITRANTMASS",
  "Grams of base to weigh for a titrant of a wanted strength.",
  {
    molarity,
    volume: number(limits.volume, "volume", "Litres of titrant to make."),
    base: base("The base to weigh."),
    assayPercent,
  },
  (given) => titrantMass(given.molarity, given.volume, given.base, given.assayPercent),
  {
    result: "g",
    equation: "{molarity} * {volume} * {base} * 100 / {assayPercent}",
    notes: [caution("intoMethanol"), caution("lye"), caution("bench")],
    example: { formula: '=TITRE.TITRANTMASS(0.1,1,"KOH",90)', gives: 6.233922222222222 },
    sources: ["ciaaw"],
  },
);

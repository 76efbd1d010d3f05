import { caution } from "../../core/batch/cautions";
import { temperatureRise } from "../../core/batch/mixing";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { worksheetFunction } from "../define";

export const TEMPERATURERISE = worksheetFunction(
  "TEMPERATURERISE",
  "By how many degrees methanol will warm as the lye dissolves, from your own small trial.",
  {
    lyeMass: number(limits.lyeMass, "lye mass", "Grams of lye for the batch."),
    methanolVolume: number(limits.methanolVolume, "methanol volume", "Litres of methanol for it."),
    trialLyeMass: number(limits.titrantMass, "trial lye mass", "Grams of lye in the trial."),
    trialMethanolVolume: number(
      limits.volume,
      "trial methanol volume",
      "Litres of methanol in the trial: 0.1 for 100 mL.",
    ),
    trialRise: number(limits.temperatureRise, "trial rise", "Degrees the trial warmed by, C."),
  },
  (given) =>
    temperatureRise(given.lyeMass, given.methanolVolume, {
      lye: given.trialLyeMass,
      methanol: given.trialMethanolVolume,
      rise: given.trialRise,
    }),
  {
    result: "C, all the lye added at once",
    equation:
      "{trialRise} * ({lyeMass} / {methanolVolume}) / ({trialLyeMass} / {trialMethanolVolume})",
    notes: [
      "Start below 45 C less that rise, and add the lye in small portions all the same (common practice, no source).",
      "A jar loses heat that a large vessel keeps: the batch may warm by more.",
      caution("intoMethanol"),
      caution("vapour"),
    ],
    example: { formula: "=TITRE.TEMPERATURERISE(500,20,10,0.1,22)", gives: 5.5 },
    sources: ["practice"],
  },
);

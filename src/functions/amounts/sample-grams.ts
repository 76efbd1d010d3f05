import { sampleGrams } from "../../core/batch/oil-mass";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { temperature } from "../common";
import { worksheetFunction } from "../define";
import { oil } from "../words";

export const SAMPLEGRAMS = worksheetFunction(
  "SAMPLEGRAMS",
  "Grams in a sample of oil taken by volume.",
  {
    volume: number(limits.sampleVolume, "volume", "Volume of the sample, mL."),
    oil,
    temperature,
  },
  (given) => sampleGrams(given.volume, given.oil, given.temperature),
  {
    result: "g",
    equation: "{volume} * density({oil}, {temperature})",
    notes: [
      "Used cooking oil below 15 C may be half solid (common practice, no source): warm it until it is clear and stir it, or weigh it.",
      "1 mL of oil is about 0.915 g (common practice, no source: measure yours), not 1 g and not 0.8 g.",
      "Weighing beats any syringe: 1 mL from a 10 mL syringe may be off by 16 % (ISO 7886-1, commonly cited).",
    ],
    example: { formula: '=TITRE.SAMPLEGRAMS(5,"canola",25)', gives: 4.5605 },
    sources: ["codex", "noureddini"],
  },
);

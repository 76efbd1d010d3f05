import { limits } from "../../core/reference/limits";
import { temperatureCorrected } from "../../core/titration/titrant";
import { number } from "../arguments";
import { worksheetFunction } from "../define";
import { titrantSolvent } from "../words";

export const TEMPERATURECORRECTED = worksheetFunction(
  "TEMPERATURECORRECTED",
  "A titre as it would have read at the temperature where the titrant's strength was set, mL.",
  {
    titre: number(limits.reading, "titre", "The titre as read, mL."),
    readAt: number(limits.temperature, "temperature", "Temperature of the titrant when read, C."),
    setAt: number(
      limits.temperature,
      "temperature",
      "Temperature of the titrant when its strength was set, C.",
    ),
    titrantSolvent,
  },
  (given) => temperatureCorrected(given.titre, given.readAt, given.setAt, given.titrantSolvent),
  {
    result: "mL",
    equation: "{titre} * (1 - {titrantSolvent} * ({readAt} - {setAt}))",
    notes: [
      "Alcohol expands five times as much as water: a titrant in alcohol, 10 C warmer, over-reads the acid by 1.1 %.",
      "A temperature of exactly 0 C is typed as 0.01, since 0 means not filled in.",
    ],
    example: { formula: '=TITRE.TEMPERATURECORRECTED(10,28,20,"alcohol")', gives: 9.912 },
    sources: ["en14104", "quam"],
  },
);

import { caution } from "../../core/batch/cautions";
import { waterFromGas } from "../../core/fuel/water-measured";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { worksheetFunction } from "../define";

export const WATERFROMGAS = worksheetFunction(
  "WATERFROMGAS",
  "Water, % m/m, from the pressure of the gas that calcium hydride makes of it.",
  {
    pressureRise: number(limits.pressureRise, "pressure rise", "How far the pressure rose, kPa."),
    gasSpace: number(limits.volume, "gas space", "Litres of gas above the sample."),
    temperature: number(limits.temperature, "temperature", "Temperature of that gas, C."),
    sampleMass: number(limits.sampleMass, "sample mass", "Grams of oil or fuel in the vessel."),
  },
  (given) => waterFromGas(given.pressureRise, given.gasSpace, given.temperature, given.sampleMass),
  {
    result: "% m/m",
    equation:
      "100 * {pressureRise} * {gasSpace} * 18.015 / (8.314462618 * ({temperature} + 273.15) * {sampleMass})",
    notes: [
      "A mole of gas for each mole of water. Shake until the pressure stands still, and read it at the temperature given.",
      caution("hydride"),
    ],
    example: { formula: "=TITRE.WATERFROMGAS(12,0.5,23,20)", gives: 0.219487402613673 },
    sources: ["definition", "ciaaw"],
  },
);

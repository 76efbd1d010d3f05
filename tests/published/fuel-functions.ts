/** What a published case about the finished fuel, its water or a probe may ask for. */
import { temperatureRise } from "../../src/core/batch/mixing";
import { waterFromAcid, waterFromBase } from "../../src/core/batch/products";
import { waterInLye } from "../../src/core/batch/batch";
import { waterOf } from "../../src/core/batch/water";
import { exact } from "../../src/core/exact/exact";
import { againstLimit } from "../../src/core/fuel/against-limit";
import { conversion, glycerolPercent } from "../../src/core/fuel/glycerol";
import { baseInFuel, metalInFuel, soapInFuel } from "../../src/core/fuel/in-fuel";
import { lossOnHeating, waterFromGas } from "../../src/core/fuel/water-measured";
import { as, quantity } from "../../src/core/quantity/quantity";
import { baseNamed } from "../../src/core/reference/bases";
import { oilNotNamed } from "../../src/core/reference/oils";
import { endPoint, type ProbePoint, steepness } from "../../src/core/titration/probe";
import { figure, found } from "./figure";
import { isProblem } from "../../src/core/problem/problem";

interface Titrated {
  titre: string;
  blank?: string;
  molarity: string;
  mass: string;
  base: string;
}

const titration = ({ titre, blank, molarity, mass }: Titrated) => ({
  titres: [quantity("mL", titre)],
  blanks: blank === undefined ? [] : [quantity("mL", blank)],
  molarity: quantity("mol/L", molarity),
  sampleMass: quantity("g", mass),
});

const curve = (points: string): ProbePoint[] =>
  points.split(" ").map((pair) => {
    const [volume = "", reading = ""] = pair.split(",");
    return [as("mL", exact(volume)), exact(reading)];
  });

export const fuelFunctions = {
  soapInFuel: (given: Titrated) =>
    figure(soapInFuel(titration(given), found(baseNamed(given.base)))),
  baseInFuel: (given: Titrated) =>
    figure(baseInFuel(titration(given), found(baseNamed(given.base)))),
  metalOfSoap: (given: { soap: string; base: string }) =>
    metalInFuel(
      quantity("mg/kg", given.soap),
      found(baseNamed(given.base)),
      quantity("mg/kg", "0"),
    ).toNumber(),
  /** Where a figure of that expanded uncertainty is just accepted, or just rejected. */
  guarded: (given: { limit: string; uncertainty: string; edge: "lower" | "upper" }) =>
    againstLimit(exact("1"), exact(given.uncertainty), exact(given.limit))[given.edge].toNumber(),
  /** Of a standard uncertainty of 1. */
  guardBand: () => againstLimit(exact("1"), exact("1.96"), exact("9")).upper.minus(9).toNumber(),
  glycerolPercent: (given: { titre: string; blank: string; molarity: string; mass: string }) =>
    figure(
      glycerolPercent(
        [quantity("mL", given.titre)],
        [quantity("mL", given.blank)],
        quantity("mol/L", given.molarity),
        quantity("g", given.mass),
      ),
    ),
  conversion: (given: { total: string; free: string }) =>
    figure(conversion(quantity("%", given.total), quantity("%", given.free), oilNotNamed)),
  lossOnHeating: (given: { dish: string; before: string; after: string }) =>
    figure(
      lossOnHeating(
        quantity("g", given.dish),
        quantity("g", given.before),
        quantity("g", given.after),
      ),
    ),
  waterFromGas: (given: { rise: string; space: string; celsius: string; mass: string }) =>
    figure(
      waterFromGas(
        quantity("kPa", given.rise),
        quantity("L", given.space),
        quantity("C", given.celsius),
        quantity("g", given.mass),
      ),
    ),
  /** 91.5 kg of oil with potassium hydroxide, its water part by part, kg. */
  waterOfBatch: (given: { percent: string; acidValue: string; assay: string; charge: string }) => {
    const [oil, base] = [quantity("kg", "91.5"), found(baseNamed("KOH"))];
    const value = quantity("mg KOH/g", given.acidValue);
    const pure = exact(given.charge).times(oil).times(10);
    const acid = oil.times(value).div("56.1").times(base.molarMass);
    const weighed = as("g", acid.plus(pure).times(100).div(given.assay));
    return waterOf(oil, quantity("%", given.percent), {
      waterFromAcid: waterFromAcid(oil, value, base),
      waterFromBase: waterFromBase(as("g", pure), base),
      waterInLye: waterInLye(weighed, base, quantity("%", given.assay)),
    }).all.toNumber();
  },
  temperatureRise: (given: { lye: string; methanol: string }) =>
    temperatureRise(quantity("g", given.lye), quantity("L", given.methanol), {
      lye: quantity("g", "10"),
      methanol: quantity("L", "0.100"),
      rise: quantity("C", "22"),
    }).toNumber(),
  probeEnd: (given: { points: string }) => {
    const end = endPoint(curve(given.points));
    if (isProblem(end)) throw new Error(JSON.stringify(end.fields));
    return end.volume.toNumber();
  },
  steepest: (given: { points: string }) => {
    const steps = steepness(curve(given.points));
    if (isProblem(steps)) throw new Error(JSON.stringify(steps.fields));
    return Math.max(...steps.map(({ slope }) => slope.toNumber()));
  },
} as const;

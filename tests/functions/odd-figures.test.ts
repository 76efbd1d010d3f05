/**
 * Each function that works out one figure, on figures none of which is 1, 10 or 100, so that no factor
 * hides. Worked out from the equations and the CIAAW weights with a pocket calculator, in ten digits.
 */
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { figure } from "./outcome";

// prettier-ignore
const worked: readonly (readonly [id: string, given: readonly unknown[], found: string])[] = [
  ["CORRECTED", [[[2.3, 2.4]], [[0.1, 0.12]]], "2.24"],
  ["ACIDVALUE", [2.3, 0.12, 6.9], "2.244"],
  ["FFAPERCENT", [2.3, 0.12, 6.9], "1.128"],
  ["FFAFROMACIDVALUE", [4.3], "2.161497326"],
  ["ACIDVALUEFROMFFA", [2.1], "4.177659574"],
  ["MEANACIDVALUE", [[[2.3, 2.4]], [[0.1, 0.12]], 0.12, [[7.1, 6.9]]], "2.15536681"],
  ["PERLITRE", [2.3, 1.2, 1.5], "1.84"],
  ["MOLARITY", [5.8, 1.4, "KOH", 90], "0.06645667038"],
  ["TITRANTMASS", [0.12, 1.4, "NaOH", 97], "6.927275504"],
  ["MOLARITYFROMKHP", [0.4321, 21.7, 99.9], "0.09740625756"],
  ["TEMPERATURECORRECTED", [24.3, 27, 18, "alcohol"], "24.05943"],
  ["SAMPLETOWEIGH", [1.7, 0.12, 3.4], "6.768"],
  ["SAMPLEGRAMS", [4.2, 0.9], "3.78"],
  ["OILMASS", [23, "uk_gal", 0.92], "96.1952644"],
  ["CHARGEPERCENT", [6.3, 88, 0.92], "0.6026086957"],
  ["MOLARRATIO", [23, 0.92], "5.467413896"],
  ["NEUTRALISER", [83, 4.3, "NaOH", 97], "262.3232989"],
  ["CATALYST", [83, 4.3, "NaOH", 97, 0.7], "861.2923711"],
  ["CATALYSTFROMFFA", [83, 2.1, "oleic", "NaOH", 97, 0.7], "853.8289422"],
  ["DOSE", [[[2.3, 2.4]], [[0.1, 0.12]], 0.12, [[7.1, 6.9]], 83, "KOH", 88, 0.7], "863.536757"],
  ["METHANOL", [83, 5.5, 4.3], "20.42173859"],
  ["SOAP", [83, 4.3, "NaOH"], "1.936864931"],
  ["BLEND", [9, 2, 4.1], "0.3"],
  ["BLENDEDACIDVALUE", [[[9, 2]], [[30, 70.5]]], "4.089552239"],
  ["FUELSOAP", [[[0.36]], [[0.03]], 0.02, 55, "NaOH"], "36.53397231"],
  ["FUELCATALYST", [[[0.36]], [[0.03]], 0.02, 55, "KOH"], "6.732636"],
  ["FUELMETAL", [44, "KOH", 3], "7.45727379"],
  ["GLYCEROL", [[[23.8]], [[25.1]], 0.012, 0.35], "0.1026190286"],
  ["CONVERSION", [0.25, 0.02], "97.78862695"],
  ["LOSSONHEATING", [45.3, 65.8, 65.76], "0.1951219512"],
  ["WATERFROMGAS", [13, 0.7, 24, 17], "0.3903164164"],
  ["TEMPERATURERISE", [870, 23, 12, 0.13, 21], "8.605434783"],
  // t of 5 % two-sided and 9 degrees is 2.262: 2.262 x 0.07 / sqrt 10 is 0.0501, of 11 it is 0.0470
  ["REPLICATES", [0.07, 0.05], "11"],
  // t of 98 degrees 1.984467, of 99 1.984217
  ["REPLICATES", [1, 0.1985], "100"],
];

/** Their figures are held elsewhere: published, by R, by simulation. */
const elsewhere = [
  "FFAUNCERTAINTY",
  "ACIDVALUEUNCERTAINTY",
  "KHPUNCERTAINTY",
  "USUALSCATTER",
  "USUALFREEDOM",
  "ENDPOINT",
];

describe("a figure worked out by hand", () => {
  it.each(worked)("is that of %s for %j", (id, given, found) => {
    const digits = found.replace(/^0\.0*|\./g, "").length;
    expect(Number(figure(id, ...given).toPrecision(Math.max(digits, 9)))).toBe(Number(found));
  });

  it("is there for every function of one figure", () => {
    const ofFigures = catalogue.filter(
      ({ spills, example }) => !spills && typeof example.gives === "number",
    );
    const held = new Set([...worked.map(([id]) => id), ...elsewhere]);
    expect(ofFigures.map(({ id }) => id).filter((id) => !held.has(id))).toEqual([]);
  });
});

/** Oil temperatures in °F: the figure keeps its unit, whatever oil is measured in afterwards. */
import { describe, expect, it } from "vitest";
import {
  benchReadsFahrenheit,
  readsFahrenheit,
  temperatureBox,
} from "../../../src/taskpane/fields/fahrenheit";
import { oilTemperature } from "../../../src/taskpane/fields/number-facts";
import { judge } from "../../../src/taskpane/widgets/judged";
import { but, seen } from "../batch/slate";

const celsius = (text: string, mark: "." | "," = "."): number | string => {
  const found = judge(text, oilTemperature, mark);
  return found.kind === "figure"
    ? found.value.toNumber()
    : found.kind === "wrong"
      ? found.sentence
      : "";
};

describe("an oil temperature in °F", () => {
  it("is read as °C", () => {
    expect([celsius("104 F"), celsius("68°F"), celsius("100,4 F", ","), celsius("40")]).toEqual([
      40, 20, 38, 40,
    ]);
    expect([celsius("213 F"), celsius("hot F")]).toEqual([
      "Oil temperature: type a number from -4 to 212 °F.",
      "Oil temperature: type a number from -4 to 212 °F.",
    ]);
  });

  it("is asked for where oil is measured in US gallons or pounds, with the hint in it", () => {
    expect(["us_gal", "lb", "uk_gal", "l", "kg"].map(readsFahrenheit)).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
    expect([benchReadsFahrenheit("US gal"), benchReadsFahrenheit(undefined)]).toEqual([
      true,
      false,
    ]);
    const box = temperatureBox(oilTemperature, "", true);
    expect([box.fact.unit, box.fact.hint]).toEqual([
      "°F",
      "When it was measured. Left empty: 68 °F.",
    ]);
    expect([box.kept("104"), box.kept(""), box.kept("104 F")]).toEqual(["104 F", "", "104 F"]);
  });

  it("stays in its own unit when other units are picked", () => {
    const inF = temperatureBox(oilTemperature, "104 F", false);
    expect([inF.text, inF.fact.unit]).toEqual(["104", "°F"]);
    const inC = temperatureBox(oilTemperature, "40", true);
    expect([inC.text, inC.fact.unit, inC.kept("41")]).toEqual(["40", "°C", "41"]);
  });

  it("makes the same batch as its °C", () => {
    const mass = (temperature: string) =>
      seen(but({ typed: { temperature }, picked: { unit: "us_gal" } })).working.oilMass;
    expect(mass("104 F")).toEqual(mass("40"));
    expect(mass("104 F")).not.toEqual(mass(""));
  });
});

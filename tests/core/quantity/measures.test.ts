/** What a measure of a logbook holds, typed by hand: the pound and both gallons are exact by law. */
import { describe, expect, it } from "vitest";
import {
  isBare,
  isSized,
  measureNamed,
  measures,
  nations,
} from "../../../src/core/quantity/measures";
import { amountUnits, isBareGallon } from "../../../src/core/quantity/units";

// prettier-ignore
const held = [
  ["L", "volume", "1000", "definition"],
  ["mL", "volume", "1", "definition"],
  ["US gal", "volume", "3785.411784", "definition"],
  ["imp gal", "volume", "4546.09", "definition"],
  ["g", "mass", "1", "definition"],
  ["kg", "mass", "1000", "definition"],
  ["lb", "mass", "453.59237", "definition"],
  ["oz", "mass", "28.349523125", "internationalYard"],
  ["grain", "mass", "0.06479891", "internationalYard"],
  ["US quart", "volume", "946.352946", "internationalYard"],
  ["US pint", "volume", "473.176473", "internationalYard"],
  ["US fl oz", "volume", "29.5735295625", "internationalYard"],
  ["imp quart", "volume", "1136.5225", "imperialGallon"],
  ["imp pint", "volume", "568.26125", "imperialGallon"],
  ["imp fl oz", "volume", "28.4130625", "imperialGallon"],
  ["drop", "volume", undefined, "practice"],
  ["cup", "either", undefined, "practice"],
  ["tablespoon", "either", undefined, "practice"],
  ["teaspoon", "either", undefined, "practice"],
];

describe("a measure of a logbook", () => {
  it("holds what the law says, and what only its maker knows is asked", () => {
    expect(
      measures.map(({ name, measures: kind, factor, source }) => [
        name,
        kind,
        factor?.toString(),
        source,
      ]),
    ).toEqual(held);
    for (const [name, , factor] of held) {
      expect(isSized(name), name).toBe(factor === undefined);
      expect(measureNamed(name)?.name).toBe(name);
    }
  });

  it("is of either nation where one word names two volumes", () => {
    expect(nations).toEqual(["US", "imp"]);
    expect(["gal", "quart", "pint", "fl oz"].map(isBare)).toEqual([true, true, true, true]);
    expect(["L", "oz", "US gal", "cup", "", undefined].map(isBare)).toEqual(
      Array<boolean>(6).fill(false),
    );
    expect([undefined, "", "nothing"].map((each) => [isSized(each), measureNamed(each)])).toEqual(
      Array<unknown>(3).fill([false, undefined]),
    );
    expect(["gal", " Gallon ", "us_gal", "g"].map(isBareGallon)).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  it("is offered in words where an amount of oil is asked for", () => {
    expect(amountUnits.map(({ name, words }) => `${name}: ${words ?? "not offered"}`)).toEqual([
      "l: Litres",
      "ml: not offered",
      "us_gal: US gallons (3.785 L)",
      "uk_gal: Imperial gallons (4.546 L)",
      "g: not offered",
      "kg: Kilograms",
      "lb: Pounds",
    ]);
  });
});

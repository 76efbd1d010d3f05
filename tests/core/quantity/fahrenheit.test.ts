import { expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { celsiusOf, fahrenheitOf } from "../../../src/core/quantity/units";

// by definition and by hand: (68 - 32) x 5 / 9 = 20
it.each([
  ["32", "0"],
  ["68", "20"],
  ["212", "100"],
  ["-40", "-40"],
  ["131", "55"],
])("%s °F are %s °C, either way", (fahrenheit, celsius) => {
  expect(celsiusOf(exact(fahrenheit)).toString()).toBe(celsius);
  expect(fahrenheitOf(exact(celsius)).toString()).toBe(fahrenheit);
});

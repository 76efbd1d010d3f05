/** The density of an oil at a temperature, kg/L. */
import { densityAt } from "../../../core/batch/density";
import { isExact } from "../../../core/exact/exact";
import { isProblem } from "../../../core/problem/problem";
import { as, type Celsius, quantity } from "../../../core/quantity/quantity";
import { limits } from "../../../core/reference/limits";
import { densitySlopePerCelsius, type Oil, usualTemperature } from "../../../core/reference/oils";
import type { Reading } from "./reading";
import { figure, wrong } from "./text";
import { type Word, wordOf } from "./word";

/** Where no lowest temperature is known, any may be given. */
const lowest: Celsius = quantity("C", limits.temperature.from);

export const oilOf = (reading: Reading): Word<Oil> => wordOf<Oil>(reading, "oil");

/** Text that stands for the density; a fat that is solid there is refused where it is used. */
export function densityText(reading: Reading, oil: Word<Oil>, temperature?: string): string {
  const given = temperature === undefined ? undefined : reading.one(temperature);
  const isKnown = given?.isKnown ?? true;
  const at = given?.isKnown && isExact(given.value) ? as("C", given.value) : usualTemperature;
  if (oil.known && isKnown) {
    const density = densityAt(oil.known, at);
    if (!isProblem(density)) return figure(density);
    reading.refuse(wrong);
    return "1";
  }
  const celsius =
    temperature === undefined || isKnown
      ? figure(at)
      : reading.figure(temperature, figure(usualTemperature));
  const density = oil.pick("oil, kg/L where it is known", (each) => each.density, true);
  const from = oil.pick("oil, kg/L known at, C", (each) => each.densityAt);
  const liquid = oil.pick("oil, liquid from, C", (each) => each.liquidFrom ?? lowest);
  reading.allow(`${celsius}>=${liquid}`);
  return `(${density}-${figure(densitySlopePerCelsius)}*(${celsius}-${from}))`;
}

export const triglycerideText = (oil: Word<Oil>): string =>
  oil.pick("oil, g of triglyceride per mol", (each) => each.triglyceride);

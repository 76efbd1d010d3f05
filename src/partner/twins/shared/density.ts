/** The density of an oil at a temperature, kg/L. */
import { densityAt } from "../../../core/batch/density";
import { isExact } from "../../../core/exact/exact";
import { isProblem } from "../../../core/problem/problem";
import { as, type Celsius, quantity } from "../../../core/quantity/quantity";
import { limits } from "../../../core/reference/limits";
import { densitySlopePerCelsius, type Oil, usualTemperature } from "../../../core/reference/oils";
import type { Reading } from "./reading";
import { figure, or, wrong } from "./text";
import { type Word, wordOf } from "./word";

/** Where no lowest temperature is known, any may be given. */
const lowest: Celsius = quantity("C", limits.temperature.from);

export const oilOf = (reading: Reading): Word<Oil> => wordOf<Oil>(reading, "oil");

/**
 * Text that stands for the density.
 * @param temperature the argument's name; left out: 20 C
 * @param isAsked 1 where the density is asked for, 0 where it does nothing: a cell, or the figure
 */
export function densityText(
  reading: Reading,
  oil: Word<Oil>,
  temperature?: string,
  isAsked = "1",
): string {
  const given = temperature === undefined ? undefined : reading.one(temperature);
  const isKnown = given?.isKnown ?? true;
  const at = given?.isKnown && isExact(given.value) ? as("C", given.value) : usualTemperature;
  const celsius =
    temperature === undefined || isKnown
      ? figure(at)
      : reading.figure(temperature, figure(usualTemperature));
  if (!isKnown) reading.allow(`ISNUMBER(${celsius})`);
  const density = oil.pick("oil: density where it is known, kg/L", (each) => each.density, true);
  if (isAsked !== "1" && !oil.known) reading.allow(`ISNUMBER(${density})`);
  if (isAsked === "0") return density;
  if (oil.known && isKnown) {
    const found = densityAt(oil.known, at);
    if (!isProblem(found)) return figure(found);
    if (isAsked === "1") reading.refuse(wrong);
    else reading.allow(`${isAsked}=0`);
    return density;
  }
  const from = oil.pick("oil: where its density is known, C", (each) => each.densityAt);
  const liquid = oil.pick("oil: liquid from, C", (each) => each.liquidFrom ?? lowest);
  const isLiquid = `${celsius}>=${liquid}`;
  reading.allow(isAsked === "1" ? isLiquid : or(`${isAsked}=0`, isLiquid));
  return `(${density}-${figure(densitySlopePerCelsius)}*(${celsius}-${from}))`;
}

export const triglycerideText = (oil: Word<Oil>): string =>
  oil.pick("oil: molar mass of its triglyceride, g/mol", (each) => each.triglyceride);

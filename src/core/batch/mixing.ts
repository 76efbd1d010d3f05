/** How warm methanol gets as lye dissolves in it, from one's own small trial. */
import { as, type Celsius, type Gram, type Litre, quantity } from "../quantity/quantity";

export interface MixingTrial {
  readonly lye: Gram;
  readonly methanol: Litre;
  readonly rise: Celsius;
}

/**
 * In proportion to the lye in a litre of methanol. A large vessel sheds less of its heat than a jar.
 * @returns degrees by which the methanol warms
 * @example 10 g in 0.100 L rose 22 C: 909 g in 24.9 L rises 8.0 C
 */
export const temperatureRise = (lye: Gram, methanol: Litre, trial: MixingTrial): Celsius =>
  as("C", trial.rise.times(lye).times(trial.methanol).div(methanol.times(trial.lye)));

/** Methoxide is mixed below this (common practice, no source): methanol itself boils at 64.7 C. */
const warmestMix = quantity("C", "45");

/**
 * What to begin below, in a sentence, for a rise if all the lye went in at once.
 * @param rise C
 */
export function startBelow(rise: Celsius): string {
  const whole = (value: Celsius): string => value.toDecimalPlaces(0).toString();
  const start = as("C", warmestMix.minus(rise));
  const rises = `All of this lye at once would warm the methanol by about ${rise.toDecimalPlaces(1).toString()} °C`;
  // a litre of methanol in a shed is not colder than this in summer
  return start.lt(coolStart)
    ? `${rises}: it cannot be kept below ${whole(warmestMix)} °C in one go. Cool the vessel, and add it in portions over an hour or longer.`
    : `${rises}: begin with methanol below ${whole(start)} °C, add the lye in small portions, stop at ${whole(warmestMix)} °C.`;
}

const coolStart = quantity("C", "20");

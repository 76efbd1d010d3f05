/** How warm methanol gets as lye dissolves in it, from one's own small trial. */
import { as, type Celsius, type Gram, type Litre } from "../quantity/quantity";

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

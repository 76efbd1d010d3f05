/** Seeded random numbers, so that a simulation gives the same table on every machine. */
export interface Random {
  /** Evenly spread, 0 to 1. */
  uniform(): number;
  /** Normal, mean 0, standard deviation 1. */
  normal(): number;
  /** Evenly spread within +-limit. */
  within(limit: number): number;
}

/** Mulberry32: a well-mixed 32-bit counter, ample for tables of some 20,000 runs. */
function uniformFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function randomFrom(seed: number): Random {
  const uniform = uniformFrom(seed);
  let spare: number | undefined;
  /** Two normals from two evenly spread numbers (Box and Muller). */
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal, within: (limit) => (2 * uniform() - 1) * limit };
}

/** A quantity as read on an instrument that shows whole steps. */
const readTo = (value: number, step: number): number => Math.round(value / step) * step;

/**
 * A difference of two readings, from wherever the first one stands.
 * @returns what was delivered, as read
 */
export const readDifference = (delivered: number, step: number, before: number): number =>
  readTo(before + delivered, step) - readTo(before, step);

/** Somewhere between two marks. */
export const anyPlace = (step: number, random: Random): number => random.uniform() * step;

/** Draws that a seed decides: the same logbook every time. */
import { seeded } from "../recognising/random";

export interface Chance {
  between(from: number, to: number, decimals: number): number;
  whole(from: number, to: number): number;
  of<T>(list: readonly T[]): T;
  yes(share: number): boolean;
}

export function chanceOf(seed: number): Chance {
  const draw = seeded(seed * 7919 + 17);
  for (let times = 0; times < 5; times += 1) draw();
  return {
    between: (from, to, decimals) => Number((from + (to - from) * draw()).toFixed(decimals)),
    whole: (from, to) => from + Math.floor(draw() * (to - from + 1)),
    of<T>(list: readonly T[]): T {
      return list[Math.floor(draw() * list.length)] as T;
    },
    yes: (share) => draw() < share,
  };
}

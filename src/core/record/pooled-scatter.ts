/** Today's scatter beside the usual one: put together, unless today scatters more. */
import { fTail } from "../replicates/f-tail";
import type { Squares } from "./usual-scatter";

/** How the same hand scattered before. */
export interface UsualScatter {
  /** mL. */
  readonly scatter: number;
  /** Whole degrees of freedom behind it. */
  readonly freedom: number;
}

/** A day that scatters as much more by chance in fewer than so many of 100 counts alone. */
export const poolingRisk = 0.05;

/**
 * Does today scatter more than the record explains? F test at 95 %: at 99 % the interval's coverage
 * falls to 83-87 % where today is twice as scattered, at 95 % to 86-90 (simulated).
 */
export const scattersMore = ({ squares, freedom }: Squares, usual: UsualScatter): boolean =>
  freedom >= 1 &&
  fTail(squares / freedom / usual.scatter ** 2, freedom, usual.freedom) < poolingRisk;

/** Today and the record together, or today alone where it scatters more. */
export function withUsual(today: Squares, usual: UsualScatter | undefined): Squares {
  if (usual === undefined || scattersMore(today, usual)) return today;
  return {
    squares: today.squares + usual.freedom * usual.scatter ** 2,
    freedom: today.freedom + usual.freedom,
  };
}

/** What a published case works out as, or why it cannot be. */
import type { Exact } from "../../src/core/exact/exact";
import { isProblem, type Outcome } from "../../src/core/problem/problem";

export const figure = (found: Outcome<Exact>): number => {
  if (isProblem(found)) throw new Error(JSON.stringify(found.fields));
  return found.toNumber();
};

export const found = <T>(value: T | undefined): T => {
  if (value === undefined) throw new Error("the case names something unknown");
  return value;
};

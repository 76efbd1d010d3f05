import { type Exact, zero } from "./exact";

/** Sum of a list; 0 for an empty one. */
export const sum = (values: readonly Exact[]): Exact =>
  values.reduce((total, value) => total.plus(value), zero);

/** Arithmetic mean of one value or more. An empty list is the caller's mistake. */
export function mean(values: readonly Exact[]): Exact {
  const [only, ...more] = values;
  if (only === undefined) throw new RangeError("mean needs one value or more");
  // dividing costs as much as five sums
  return more.length === 0 ? only : sum(values).div(values.length);
}

const first = (values: readonly Exact[]): Exact => {
  const [value] = values;
  if (value === undefined) throw new RangeError("a list of one value or more is needed");
  return value;
};

export const largest = (values: readonly Exact[]): Exact =>
  values.reduce((top, value) => (value.gt(top) ? value : top), first(values));

export const smallest = (values: readonly Exact[]): Exact =>
  values.reduce((low, value) => (value.lt(low) ? value : low), first(values));

/** Largest less smallest. */
export const range = (values: readonly Exact[]): Exact => largest(values).minus(smallest(values));

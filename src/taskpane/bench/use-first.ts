/** A draft that nobody has touched begins from My bench, and follows it until it is touched. */
import { useEffect, useRef } from "react";
import type { BenchValues } from "../../workbook/tables/bench";
import type { BenchFound } from "./use-bench";

const nothingSaid: BenchValues = {};

export const valuesIn = (found: BenchFound): BenchValues | undefined =>
  found.state === "read" ? (found.bench?.values ?? nothingSaid) : undefined;

/**
 * @param fresh a draft that nobody has touched, and that nothing was begun in
 * @param first a fresh draft begun with these values
 * @param replace puts it in the place of the one that is there
 * @returns whether somebody has begun it
 */
export function useFirst<Draft>(
  found: BenchFound,
  draft: Draft | undefined,
  fresh: () => Draft,
  first: (values: BenchValues) => Draft,
  replace: (next: () => Draft) => void,
): boolean {
  const begun = useRef<string | undefined>(undefined);
  useEffect(() => {
    const values = valuesIn(found);
    if (draft === undefined || values === undefined) return;
    const text = JSON.stringify(draft);
    if (text !== JSON.stringify(fresh()) && text !== begun.current) return;
    const next = first(values);
    begun.current = JSON.stringify(next);
    if (begun.current !== text) replace(() => next);
  }, [found, draft, fresh, first, replace]);
  if (draft === undefined) return false;
  const text = JSON.stringify(draft);
  return text !== begun.current && text !== JSON.stringify(fresh());
}

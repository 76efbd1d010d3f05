import { computed, type Exact, exact } from "../../../core/exact/exact";
import { rounded } from "../../../core/exact/rounding";
import type { SourceId } from "../../../core/reference/sources";

/** A published or exact figure, and how our own code comes to it. */
export interface Check {
  readonly check: string;
  readonly source: SourceId;
  /** Clause, table or example, where the source's name does not say it. */
  readonly where?: string;
  /** As printed. */
  readonly expected: string;
  /** Relative difference allowed; left out: ours must round to the printed figure. */
  readonly within?: number;
  compute(): number;
}

/** What is printed has so many decimals that a correct figure rounds to it. */
function agrees(ours: Exact, check: Check): boolean {
  const printed = exact(check.expected);
  if (check.within !== undefined) {
    return ours
      .minus(printed)
      .abs()
      .lte(printed.abs().times(exact(check.within)));
  }
  const decimals = check.expected.split(".")[1]?.length ?? 0;
  return rounded(ours, decimals).eq(printed);
}

export interface Outcome {
  readonly expected: Exact;
  readonly ours: Exact;
  readonly agrees: boolean;
}

export function run(check: Check): Outcome {
  const ours = computed(check.compute());
  return { expected: exact(check.expected), ours, agrees: agrees(ours, check) };
}

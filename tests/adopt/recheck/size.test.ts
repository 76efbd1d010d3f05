import { describe, expect, it } from "vitest";
import { recheck, recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { logbookOf, rowOf, usual, type Wrong } from "./rows";

const wrongs: readonly Wrong[] = [
  {},
  {},
  {},
  { byCharge: true },
  { blank: 0 },
  { factor: 1.3 },
  { blank: 0, assay: 1 },
];

const manyRows = (count: number) =>
  logbookOf(
    Array.from({ length: count }, (_, at) =>
      rowOf(
        {
          ...usual,
          amount: 50 + (at % 90),
          titres: [5 + (at % 70) / 20, 5.1 + (at % 70) / 20, 5.05 + (at % 70) / 20],
        },
        {},
        wrongs[at % wrongs.length],
      ),
    ),
  );

describe("a long logbook", () => {
  it("says how far it is and can be left at any row", () => {
    const steps = recheck([manyRows(1_000)]);
    const first = steps.next();
    expect(first.done).toBe(false);
    expect(first.value).toEqual({ done: 100, of: 1_000 });
    steps.return(recheckAtOnce([]));
    expect(steps.next().done).toBe(true);
  });
});

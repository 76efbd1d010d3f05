/** What My bench says in this workbook, read again whenever it changes. */
import { type Fault, type Host, isFault } from "../../sheet/port";
import { type BenchRead, readBench } from "../../workbook/planning/bench/read-bench";
import { unexpected } from "../unexpected";
import { keepRead, useRead } from "../lots/use-read";

export type BenchFound =
  | { readonly state: "looking" }
  | { readonly state: "refused" }
  /** Undefined where the workbook has no such table. */
  | { readonly state: "read"; readonly bench: BenchRead | undefined };

const looking: BenchFound = { state: "looking" };

async function look(host: Host): Promise<BenchFound> {
  const found: BenchRead | undefined | Fault | { broken: true } = await readBench(host).catch(
    (failure: unknown) => {
      unexpected(failure);
      return { broken: true } as const;
    },
  );
  if (found !== undefined && ("broken" in found || isFault(found))) return { state: "refused" };
  return { state: "read", bench: found };
}

export const useBench = (host: Host): BenchFound =>
  useRead<BenchFound>(host, look, looking, keepRead).found;

import { describe, expect, it } from "vitest";
import type { Host } from "../../../src/sheet/port";
import { openMemory } from "../../host/open-memory";
import { planned } from "../../host/contract-recording";
import { fryerLot } from "../record/records";
import { logbookOf, ourFormula, ourHeadings, type Typed } from "./logbooks";

const rowNumber = (lot: number): Typed[] =>
  ourHeadings.map((heading) => {
    if (heading === "Lot") return `L-${String(lot)}`;
    return heading === "Titre 1 mL" ? 1 + lot / 1000 : ourFormula(heading) || null;
  });

/** Counts what is read. */
function counted(host: Host): { host: Host; reads: () => number } {
  let reads = 0;
  return {
    reads: () => reads,
    host: {
      capabilities: () => host.capabilities(),
      read: (questions) => {
        reads += 1;
        return host.read(questions);
      },
      write: (label, steps) => host.write(label, steps),
      watch: (heard) => host.watch(heard),
      fileBytes: () => host.fileBytes(),
      openFile: () => host.openFile(new Uint8Array()),
    },
  };
}

describe("a long logbook", () => {
  it("is planned for with two reads and a look for batches, and finds the row below its last", async () => {
    const rows = Array.from({ length: 400 }, (_, lot) => rowNumber(lot));
    const { host, reads } = counted(openMemory(logbookOf({ headings: ourHeadings, rows })));
    const plan = await planned(host, fryerLot);
    expect(reads()).toBe(3);
    expect(plan.block.row).toBe(402);
  });
});

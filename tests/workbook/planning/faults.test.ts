/** Whatever goes wrong, at whatever call: a sentence, the readings kept, nothing half-written. */
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { MemoryHost } from "../../host/memory";
import type { Call } from "../../host/memory/interference";
import {
  type Decoration,
  type Fault,
  fault,
  type FaultCode,
  type Host,
} from "../../../src/sheet/port";
import { inTime } from "../../../src/sheet/port/in-time";
import type { Book } from "../../../src/sheet/book";
import { afterWriting } from "../../../src/taskpane/planned/carrying";
import { faultSentence } from "../../../src/workbook/planning/fault-wording";
import type { Confirmed, RecordOutcome } from "../../../src/workbook/planning/plan";
import { recordTitration } from "../../../src/workbook/planning/record/record-titration";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";
import { planned } from "../../host/contract-recording";
import { fryerLot } from "../record/records";

const codes: FaultCode[] = [
  "read-only",
  "sheet-protected",
  "workbook-protected",
  "table-filtered",
  "target-not-empty",
  "name-taken",
  "being-edited",
  "busy",
  "too-large",
  "not-undoable",
  "no-answer",
  "half-done",
  "not-offered",
  "failed",
];

const agreement = async (host: MemoryHost): Promise<Confirmed> => {
  const { fingerprint, mustConfirm } = await planned(host, fryerLot);
  return { fingerprint, agreed: mustConfirm };
};

const isAt = (call: Call, verb: Call["verb"], nth: number, moment: Call["moment"]): boolean =>
  call.verb === verb && call.count === nth && call.moment === moment;

/** Every moment of a recording at which something can go wrong, found by letting it go right. */
async function moments(book: Book | undefined, confirmed: Confirmed): Promise<Call[]> {
  const host = openMemory(book);
  const calls: Call[] = [];
  host.interference = (call) => {
    calls.push(call);
    return undefined;
  };
  await recordTitration(host, fryerLot, confirmed);
  return calls;
}

const books: [string, () => Book | undefined][] = [
  ["an empty workbook", () => undefined],
  ["a logbook", sampleLogbook],
];

describe.each(books)("recording in %s", (_, book) => {
  // of the same workbook the same is shown: it is agreed to once
  let once: Promise<Confirmed> | undefined;
  const agreed = (): Promise<Confirmed> => (once ??= agreement(openMemory(book())));
  const allMoments = async (): Promise<Call[]> => moments(book(), await agreed());

  const attempt = async (
    what: (call: Call) => Fault | undefined,
  ): Promise<{ outcome: RecordOutcome; host: MemoryHost; before: unknown }> => {
    const confirmed = await agreed();
    const host = openMemory(book());
    const before = host.book;
    host.interference = what;
    const outcome = await recordTitration(host, fryerLot, confirmed);
    host.interference = () => undefined;
    return { outcome, host, before };
  };

  it("leaves the workbook exactly as it was when a call fails before or during the write", async () => {
    const all = await allMoments();
    const written = all.findIndex(({ verb, moment }) => verb === "write" && moment === "after");
    expect(written).toBeGreaterThan(5);
    for (const { verb, count, moment } of all.slice(0, written)) {
      for (const code of ["failed", "sheet-protected"] as const) {
        const { outcome, host, before } = await attempt((call) =>
          isAt(call, verb, count, moment) ? fault(code, "Log") : undefined,
        );
        expect(outcome).toEqual({
          kind: "refused",
          sentence: faultSentence(fault(code, "Log")),
        });
        expect(host.book).toEqual(before);
        expect(host.undoLabels).toEqual([]);
      }
    }
  });

  it("takes a host that throws for one that failed", async () => {
    for (const { verb, count, moment } of await allMoments()) {
      if (moment === "after") continue;
      const { outcome, host, before } = await attempt((call) => {
        if (isAt(call, verb, count, moment)) throw new Error("no such luck");
        return undefined;
      });
      if (outcome.kind === "recorded") expect(outcome.isReadBack).toBe(false);
      else {
        expect(outcome).toMatchObject({
          kind: "refused",
          sentence: faultSentence(fault("failed")),
        });
        expect(host.book).toEqual(before);
      }
    }
  });

  it("finds the row when only the answer to the write was lost", async () => {
    const { outcome, host } = await attempt(({ verb, moment }) =>
      verb === "write" && moment === "after" ? fault("no-answer") : undefined,
    );
    expect(outcome).toMatchObject({ kind: "recorded", isReadBack: true, differences: [] });
    expect(host.undoLabels).toEqual(["Record titration of F-207"]);
  });

  it("says that it is not known when the write is not answered and the row is not there", async () => {
    const { outcome, host, before } = await attempt(({ verb, moment }) =>
      verb === "write" && moment === "before" ? fault("no-answer") : undefined,
    );
    expect(outcome.kind).toBe("not-known");
    expect("sentence" in outcome && outcome.sentence).toContain("did not answer in time");
    expect(host.book).toEqual(before);
  });

  it("says where to look when the row was written and cannot be read back", async () => {
    const all = await allMoments();
    const { outcome } = await attempt((call) =>
      isAt(call, "read", all.at(-1)?.count ?? 0, "before") ? fault("being-edited") : undefined,
    );
    expect(outcome).toMatchObject({ kind: "recorded", isReadBack: false });
    expect("sentence" in outcome && outcome.sentence).toContain("could not be read back");
  });

  it("writes nothing when the workbook changed after the plan was shown", async () => {
    const host = openMemory(book());
    const confirmed = await agreement(host);
    await host.write("Another person", [{ do: "add-sheet", name: "Titrations" }]);
    const table = { sheet: "Titrations", row: 40, column: 0, rows: 1, columns: 1 };
    await host.write("Another person", [
      { do: "set-cells", block: table, contents: [[{ kind: "value", value: "x" }]] },
    ]);
    host.change(({ tables }) => {
      const found = tables.find(({ name }) => name === "Titrations");
      // an empty row that is in the table already
      if (found) found.block = { ...found.block, rows: found.block.rows + 1 };
    });
    const before = host.book;
    expect(await recordTitration(host, fryerLot, confirmed)).toMatchObject({
      kind: "to-confirm",
      sentence: "The workbook has changed since this was shown. Nothing was written: look again.",
    });
    expect(host.book).toEqual(before);
  });
});

describe("a host that is late", () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  const never = new Promise<never>(() => undefined);
  const patience = 5000;

  /** Records on a host that hangs at a verb, and lets the time pass. */
  const late = async (verb: "capabilities" | "read" | "write"): Promise<RecordOutcome> => {
    const memory = openMemory();
    const confirmed = await agreement(memory);
    const hanging: Host = {
      capabilities: () => (verb === "capabilities" ? never : memory.capabilities()),
      read: (questions) => (verb === "read" ? never : memory.read(questions)),
      write: (label, steps) => (verb === "write" ? never : memory.write(label, steps)),
      watch: (heard) => memory.watch(heard),
      fileBytes: () => memory.fileBytes(),
      openFile: () => memory.openFile(),
    };
    const outcome = recordTitration(inTime(hanging, patience), fryerLot, confirmed);
    await vi.advanceTimersByTimeAsync(patience * 4);
    return outcome;
  };

  it("is not waited for without end, whichever call it hangs at", async () => {
    const sentence = faultSentence(fault("no-answer"));
    expect(await late("capabilities")).toEqual({ kind: "refused", sentence });
    expect(await late("read")).toEqual({ kind: "refused", sentence });
    expect(await late("write")).toMatchObject({ kind: "not-known" });
  });

  it("may take as long for each piece of many cells as for a call", async () => {
    const cells = (rows: number) =>
      ({ ask: "cells", block: { sheet: "Log", row: 0, column: 0, rows, columns: 40 } }) as const;
    const hanging: Host = openMemory();
    hanging.read = () => never;
    const answers: unknown[] = [];
    void inTime(hanging, patience)
      .read([cells(20_000)])
      .then((found) => answers.push(found));
    await vi.advanceTimersByTimeAsync(patience * 40);
    expect(answers).toEqual([]);
    await vi.advanceTimersByTimeAsync(patience * 2);
    expect(answers).toMatchObject([{ code: "no-answer" }]);
  });

  it("is answered as it answers when it is in time", async () => {
    const memory = openMemory();
    const confirmed = await agreement(memory);
    const outcome = recordTitration(inTime(memory, patience), fryerLot, confirmed);
    await vi.advanceTimersByTimeAsync(patience);
    expect(await outcome).toMatchObject({ kind: "recorded", differences: [] });
    expect(vi.getTimerCount()).toBe(0);
  });
});

describe("functions that do not answer at once", () => {
  /** The results of a row show an error for a while: until the functions answer, or are asked again. */
  const slow = (error: string, healsBy: "reading" | "writing", reads: number): Host => {
    const memory = openMemory();
    let left = Infinity;
    let writes = 0;
    return {
      capabilities: () => memory.capabilities(),
      watch: (heard) => memory.watch(heard),
      fileBytes: () => memory.fileBytes(),
      openFile: () => memory.openFile(),
      write: (label, steps) => {
        writes += 1;
        if (writes === 1) left = reads;
        else if (healsBy === "writing") left = 0;
        return memory.write(label, steps);
      },
      read: async (questions) => {
        const found = await memory.read(questions);
        if ("kind" in found || writes === 0 || left <= 0) return found;
        if (healsBy === "reading") left -= 1;
        return found.map((each) =>
          each.kind !== "cells"
            ? each
            : {
                ...each,
                values: each.values.map((row, r) =>
                  row.map((value, c) => (each.formulas[r]?.[c] ? { error } : value)),
                ),
              },
        );
      },
    };
  };
  const record = async (host: Host): Promise<RecordOutcome> => {
    const confirmed = await planned(host, fryerLot);
    return recordTitration(host, fryerLot, { fingerprint: confirmed.fingerprint, agreed: [] }, () =>
      Promise.resolve(),
    );
  };

  it("are waited for", async () => {
    const outcome = await record(slow("#BUSY!", "reading", 2));
    expect(outcome).toMatchObject({ differences: [], isOneUndo: true });
  });

  it("are asked again when the program did not know them", async () => {
    // What is written again is an undo more.
    const outcome = await record(slow("#NAME?", "writing", 1));
    expect(outcome).toMatchObject({ differences: [], isOneUndo: false });
  });

  it("are reported, cell by cell, when they never answer", async () => {
    const outcome = await record(slow("#NAME?", "reading", 99));
    if (outcome.kind !== "recorded") throw new Error("not recorded");
    expect(outcome.differences.length).toBeGreaterThan(2);
    expect(outcome.differences[0]?.sentence).toMatch(/shows #NAME\?: its function did not answer/);
  });
});

describe("a record without what only makes it easier to read", () => {
  const short = async (missing: readonly Decoration[]): Promise<RecordOutcome> => {
    const memory = openMemory();
    const confirmed = await agreement(memory);
    const write = memory.write.bind(memory);
    memory.write = async (label, steps) =>
      (await write(label, steps)) ?? { kind: "shortfall", missing };
    return recordTitration(memory, fryerLot, confirmed);
  };

  it("is recorded, with what was left out said and no single undo promised", async () => {
    const outcome = await short(["add-note", "set-width"]);
    expect(outcome).toMatchObject({ kind: "recorded", differences: [], isOneUndo: false });
    expect(outcome).toMatchObject({ asides: [expect.stringMatching(/notes.*and column widths/)] });
    expect(afterWriting(outcome)).toMatchObject({ isWell: true, isOneUndo: false });
  });

  it("says nothing of what nobody would miss", async () => {
    expect(await short(["select"])).toMatchObject({ asides: [] });
    expect(await short([])).toMatchObject({ asides: [] });
  });
});

describe("the sentences about faults", () => {
  it("say for every fault what happened and what to do, in 6 to 200 characters", () => {
    for (const code of codes) {
      for (const about of ["", "Log", "x".repeat(300)]) {
        const sentence = faultSentence(fault(code, about));
        expect(sentence.length).toBeGreaterThan(60);
        expect(sentence.length).toBeLessThanOrEqual(200);
        expect(sentence).toMatch(/what you typed is kept/i);
        expect(sentence.endsWith(".")).toBe(true);
      }
    }
  });
});

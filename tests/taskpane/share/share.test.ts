import { describe, expect, it } from "vitest";
import {
  type Capabilities,
  type Fault,
  fault,
  type FaultCode,
  type Host,
} from "../../../src/sheet/port";
import {
  dayOf,
  faultWords,
  handOver,
  makeCopy,
  notOpenedWords,
  whatIsOffered,
} from "../../../src/taskpane/share/make-copy";
import {
  canMake,
  firstState,
  type Made,
  reduceShare,
  type ShareAct,
  type ShareState,
} from "../../../src/taskpane/share/share-state";
import { isFileProblem, openXlsx } from "../../../src/xlsx";
import { isRefused } from "../../../src/sheet/refusal";
import { openMemory } from "../../host/open-memory";
import { withFile } from "../page/file-host";

const made: Made = {
  bytes: new Uint8Array(),
  fileName: "partner-copy.xlsx",
  report: {
    kind: "partner",
    formulas: 1,
    sentences: 0,
    left: [],
    sheets: ["Log"],
    helperCells: 0,
    workings: undefined,
    readMe: "Read me",
    unfilled: [],
    webExtensions: 0,
  },
};

const toSave: ShareAct = { do: "made", made, handed: { how: "to-save" } };

const after = (...acts: readonly ShareAct[]): ShareState => acts.reduce(reduceShare, firstState);

const day = new Date(2026, 4, 4, 23, 59);
const host = (kind: string): Host => withFile(openMemory(), kind);

describe("where the making of a copy stands", () => {
  it("begins by looking, and nothing can be made before it is known whether it can", () => {
    expect(canMake(firstState)).toBe(false);
    expect(after({ do: "make", kind: "partner" })).toEqual(firstState);
    expect(canMake(after({ do: "offered" }))).toBe(true);
  });

  it("makes one copy at a time: what is asked meanwhile is not heard", () => {
    const making = after({ do: "offered" }, { do: "make", kind: "partner" });
    expect(making).toEqual({ at: "making", kind: "partner" });
    expect(canMake(making)).toBe(false);
    expect(reduceShare(making, { do: "make", kind: "numbers" })).toBe(making);
  });

  it("can make another after one was made, and after one failed", () => {
    const begun = [{ do: "offered" }, { do: "make", kind: "partner" }] as const;
    expect(canMake(after(...begun, toSave))).toBe(true);
    expect(canMake(after(...begun, { do: "failed", sentence: "It failed." }))).toBe(true);
  });

  it("hears of a copy only while one is being made", () => {
    expect(after({ do: "offered" }, toSave)).toEqual({ at: "ready" });
    expect(after({ do: "offered" }, { do: "failed", sentence: "Late." })).toEqual({ at: "ready" });
  });

  it("hands a copy out no longer once the workbook has changed, and makes another", () => {
    const done = [{ do: "offered" }, { do: "make", kind: "partner" }, toSave] as const;
    const changed = after(...done, { do: "changed" });
    expect(changed).toEqual({ at: "changed" });
    expect(canMake(changed)).toBe(true);
    expect(after({ do: "offered" }, { do: "changed" })).toEqual({ at: "ready" });
  });
});

/** A program that opens files, or fails to with this; and that saves them, or does not listen. */
function opening(trouble: Fault | undefined, savesFiles: boolean) {
  const opened: Uint8Array[] = [];
  const host: Host = Object.assign(openMemory(), {
    capabilities: () =>
      Promise.resolve<Capabilities>({
        kind: "capabilities",
        program: "the program",
        canWrite: true,
        hasFileBytes: true,
        opensFiles: true,
        savesFiles,
        hasCharts: true,
      }),
    openFile: (bytes: Uint8Array) => {
      opened.push(bytes);
      return Promise.resolve(trouble);
    },
  });
  return { host, opened };
}

describe("what is offered", () => {
  it("is a copy where the program hands out its file", async () => {
    expect(await whatIsOffered(host("logbook"))).toEqual({ do: "offered" });
  });

  it("is nothing where a copy could neither open nor be saved", async () => {
    const { host: program } = opening(undefined, false);
    const none = { ...(await program.capabilities()), opensFiles: false } as Capabilities;
    Object.assign(program, { capabilities: () => Promise.resolve(none) });
    expect(await whatIsOffered(program)).toMatchObject({ do: "not-offered" });
  });

  it("is the way round it where the program does not", async () => {
    const found = await whatIsOffered(openMemory());
    expect(found).toMatchObject({ do: "not-offered" });
    expect("sentence" in found ? found.sentence : "").toContain("npm run share");
  });
});

describe("a copy that was made", () => {
  it("is saved as a file where the program opens none", async () => {
    expect(await handOver(host("logbook"), made)).toEqual(toSave);
  });

  it.each([true, false])("opens as a new workbook where it can, its very bytes", async (saves) => {
    const { host: program, opened } = opening(undefined, saves);
    expect(await handOver(program, made)).toEqual({
      do: "made",
      made,
      handed: { how: "opened", isSavable: saves },
    });
    expect(opened).toEqual([made.bytes]);
  });

  it("is not said to be made where it did not open and no link would save it", async () => {
    const { host: program } = opening(fault("too-large"), false);
    expect(await handOver(program, made)).toEqual({
      do: "failed",
      sentence: notOpenedWords(fault("too-large")),
    });
  });

  it("can be saved all the same where it did not open, and says why", async () => {
    const { host: program } = opening(fault("failed"), true);
    expect(await handOver(program, made)).toEqual({
      do: "made",
      made,
      handed: { how: "to-save", sentence: notOpenedWords(fault("failed")) },
    });
  });

  it("is not said to be made where the program does not answer at all", async () => {
    const { host: program } = opening(undefined, true);
    const silent = Object.assign(program, {
      capabilities: () => Promise.resolve(fault("no-answer")),
    });
    expect(await handOver(silent, made)).toMatchObject({ do: "failed" });
  });
});

describe("a copy from the pane", () => {
  it.each([
    ["partner", "partner-copy-2026-05-04.xlsx", ["Workings", "Read me"]],
    ["numbers", "numbers-only-2026-05-04.xlsx", ["Read me"]],
  ] as const)("is a workbook with a name and a report: %s", async (kind, fileName, added) => {
    const copy = await makeCopy(host("logbook"), kind, day);
    if (isRefused(copy)) throw new Error(copy.sentence);
    expect(copy.fileName).toBe(fileName);
    expect(copy.report.kind).toBe(kind);
    const opened = openXlsx(copy.bytes);
    if (isFileProblem(opened)) throw new Error("the copy cannot be opened");
    expect(opened.sheets.map(({ name }) => name).slice(-added.length)).toEqual(added);
    const words = opened.sheets.at(-1)?.cells.map(({ value }) => value);
    expect(words).toContain("2026-05-04");
  });

  it("that cannot be had is a sentence", async () => {
    expect(await makeCopy(host("edited"), "partner", day)).toMatchObject({
      kind: "refused",
      sentence: expect.stringContaining("A cell is being edited") as string,
    });
    expect(await makeCopy(openMemory(), "partner", day)).toMatchObject({
      kind: "refused",
      sentence: expect.stringContaining("does not hand out its file") as string,
    });
  });

  it("says of every fault what happened and what to do, in 6 to 200 characters", () => {
    const codes: readonly FaultCode[] = [
      "read-only",
      "sheet-protected",
      "being-edited",
      "no-answer",
      "half-done",
      "not-offered",
      "failed",
    ];
    for (const code of [...codes, "too-large", "busy"] as const) {
      expect(faultWords(fault(code))).toMatch(/^.{6,200}$/);
      expect(notOpenedWords(fault(code))).toMatch(/^.{6,200}$/);
    }
    expect(faultWords(fault("failed", "The file is damaged."))).toBe("The file is damaged.");
  });

  it("counts days as the person at the machine does", () => {
    expect(dayOf(day)).toBe("2026-05-04");
  });
});

/** Drafts under two workbooks never meet, whatever the workbooks are called. */
import fc from "fast-check";
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { keptHere } from "../../src/taskpane/kept-here";
import { underWayUnsaved } from "../../src/taskpane/unsaved/under-way-unsaved";
import { newDraft } from "../../src/taskpane/titrate/draft";
import { databaseInMemory } from "../database-in-memory";

const name = fc.oneof(
  fc.string({ unit: "binary", maxLength: 12 }),
  fc.constantFrom("", "a", 'a"', 'x of "a"', '"a"', "a/", "a/titration/1", "\ud800", "file/a.xlsx"),
);
const titration = (id: string) => newDraft(id, "2026-11-30");

describe("drafts that the browser keeps", () => {
  const { empty, ...globals } = databaseInMemory();
  beforeAll(() => {
    for (const [each, stands] of Object.entries(globals)) vi.stubGlobal(each, stands);
  });
  beforeEach(empty);
  afterAll(() => {
    vi.unstubAllGlobals();
  });

  it("are found beside their own workbook, and forgotten with no other", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(name, { minLength: 2, maxLength: 5 }),
        fc.nat(),
        async (workbooks, at) => {
          empty();
          const kept = keptHere("", () => 1);
          for (const workbook of workbooks) {
            const { drafts, memory } = kept.of(workbook);
            expect(await drafts.all()).toEqual([]);
            expect(await memory.read("batch")).toBeUndefined();
            await drafts.keep(titration("one"));
            await drafts.keep(titration(`of ${workbook}`));
            await memory.keep("batch", { of: workbook });
          }
          const gone = workbooks[at % workbooks.length] ?? "";
          await kept.forget(gone);
          for (const workbook of workbooks) {
            const { drafts, memory } = keptHere("", () => 1).of(workbook);
            const found = (await drafts.all()).map(({ draft }) => draft.id);
            const isGone = workbook === gone && workbook !== "";
            expect(found.sort()).toEqual(isGone ? [] : [`of ${workbook}`, "one"]);
            expect(await memory.read("batch")).toEqual(isGone ? undefined : { of: workbook });
          }
        },
      ),
    );
  });

  it("are those of the example where an earlier build kept them", async () => {
    const kept = keptHere("", () => 1);
    const open = () =>
      globals.indexedDB.open("titrebook-tasks").result as {
        transaction: () => { objectStore: () => { put: (value: unknown, key: string) => void } };
      };
    open().transaction().objectStore().put({ of: "before" }, "/batch");
    expect(await kept.of("").memory.read("batch")).toEqual({ of: "before" });
    expect(await kept.of("file/a.xlsx").memory.read("batch")).toBeUndefined();
  });

  it("stay for the example and the thirty workbooks that were typed beside last", async () => {
    await keptHere("", () => 1)
      .of("")
      .memory.keep("batch", "example");
    const beside = (at: number) => `file/${String(at)}.xlsx`;
    for (let at = 0; at < 32; at += 1) {
      const { drafts, memory } = keptHere("", () => 1).of(beside(at));
      await drafts.keep(titration("one"));
      await memory.keep("batch", at);
      // the first is typed beside again
      if (at === 20)
        await keptHere("", () => 1)
          .of(beside(0))
          .memory.keep("batch", 0);
      await expect
        .poll(async () => {
          const list = await keptHere("", () => 1)
            .of("")
            .memory.read("workbooks");
          return Array.isArray(list) && list.includes(beside(at));
        })
        .toBe(true);
    }
    const left = [];
    for (let at = 0; at < 32; at += 1) {
      const { drafts, memory } = keptHere("", () => 1).of(beside(at));
      const count = (await drafts.all()).length;
      expect((await memory.read("batch")) === undefined).toBe(count === 0);
      if (count > 0) left.push(at);
    }
    expect(left).toEqual([0, ...Array.from({ length: 29 }, (_, at) => at + 3)]);
    expect(
      await keptHere("", () => 1)
        .of("")
        .memory.read("batch"),
    ).toBe("example");
  });

  it("of workbooks in no file are told apart, the latest first, and none is lost by leaving it", async () => {
    let now = 1;
    const kept = keptHere("", () => now++);
    expect(await underWayUnsaved(kept)).toEqual([]);
    await kept.of("").drafts.keep(titration("first"));
    expect(await underWayUnsaved(kept)).toEqual([{ workbook: "", tasks: ["Titrate"] }]);
    // left: the next one has a name of ours
    const another = kept.anotherUnsaved();
    expect(kept.anotherUnsaved()).not.toBe(another);
    await kept.of(another).drafts.keep(titration("second"));
    await kept.of("document/a.xlsx").drafts.keep(titration("third"));
    await vi.waitFor(async () => {
      expect(await underWayUnsaved(kept)).toEqual([
        { workbook: another, tasks: ["Titrate"] },
        { workbook: "", tasks: ["Titrate"] },
      ]);
    });
  });
});

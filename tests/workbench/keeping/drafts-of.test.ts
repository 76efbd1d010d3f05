/**
 * What was typed beside a workbook is found beside that one and no other: opened, begun, saved, saved
 * under another name, forgotten, the page loaded again, in any order.
 */
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { keptHere } from "../../../src/taskpane/kept-here";
import { newDraft } from "../../../src/taskpane/titrate/draft";
import { downloadName } from "../../../src/workbench/bar/download-name";
import { entryFrom } from "../../../src/workbench/keeping/entry";
import { forgetKept } from "../../../src/workbench/keeping/forget";
import type { FileOnDisk } from "../../../src/workbench/keeping/file-on-disk";
import { Hold } from "../../../src/workbench/keeping/hold";
import { Keeper } from "../../../src/workbench/keeping/keeper";
import { KeptWorkbooks } from "../../../src/workbench/keeping/store";
import type { Remembered } from "../../../src/workbench/keeping/tab-memory";
import { toOpen } from "../../../src/workbench/keeping/to-open";
import { databaseInMemory } from "../../database-in-memory";

const sample = "logbook.xlsx";
const begun = "my-logbook.xlsx";
const bytes = new Uint8Array([1]);

/** A person, the page, and which workbook each name, each kept one and each draft is of. */
class Day {
  readonly kept = keptHere("", () => 1);
  private readonly store = new KeptWorkbooks();
  private tab: Remembered | undefined;
  private readonly page = { now: false, count: 0 };
  private keeper = this.newKeeper();
  /** Which of all workbooks there are is open. */
  private open = "example";
  private name = sample;
  private isSample = true;
  private readonly files = new Map([
    ["tidy.xlsx", "tidy"],
    ["weir.xlsx", "weir"],
    // somebody's own, that happens to be called as the example is
    [sample, "saved example"],
  ]);
  private readonly entries = new Map<string, string>();
  private readonly typed = new Map<string, string>();
  private fresh = 0;

  private newKeeper(): Keeper {
    const { page } = this;
    const edited = {
      get now() {
        return page.now;
      },
      get count() {
        return page.count;
      },
      watch: () => undefined,
    };
    const keeper = new Keeper(
      this.store,
      new Hold(),
      { read: () => this.tab, note: (what) => void (this.tab = what) },
      {
        edited,
        isTyping: () => false,
        place: () => undefined,
        refuse: (sentence) => expect.unreachable(sentence),
      },
      sample,
    );
    keeper.follow({ isBusy: false, bytes: () => Promise.resolve(bytes), named: () => undefined });
    return keeper;
  }

  private pick(from: Iterable<string>, at: number): string | undefined {
    const all = [...from];
    return all[at % Math.max(1, all.length)];
  }

  private is(open: string, name: string, isSample = false): void {
    [this.open, this.name, this.isSample] = [open, name, isSample];
    this.page.now = false;
  }

  private readonly acts: Record<string, (at: number) => Promise<void>> = {
    type: async (at) => {
      const { drafts, memory } = this.kept.of(this.keeper.drafts);
      await memory.keep("batch", String(at));
      await drafts.keep(newDraft(String(at), "2026-11-30"));
      this.typed.set(this.open, String(at));
    },
    edit: async () => {
      this.page.now = true;
      this.page.count += 1;
      await this.keeper.now();
    },
    open: async (at) => {
      const name = this.pick(this.files.keys(), at) ?? "";
      await this.keeper.opened(name, bytes, {});
      this.is(this.files.get(name) ?? "", name);
    },
    begin: async () => {
      await this.keeper.opened(begun, bytes, { isNew: true });
      this.is(`new ${String((this.fresh += 1))}`, begun);
    },
    "save into the downloads": async () => {
      // two of them would have one name
      if (this.name === begun) return;
      const name = downloadName(this.name, new Date(2026, 10, 30, 14, 32));
      await this.keeper.saved(this.name, bytes, this.page.count, undefined);
      await this.keeper.settled();
      this.page.now = false;
      this.files.set(name, this.isSample ? "saved example" : this.open);
    },
    "save as": async () => {
      const name = `named-${String((this.fresh += 1))}.xlsx`;
      await this.keeper.saved(name, bytes, this.page.count, { handle: { name } } as FileOnDisk);
      await this.keeper.settled();
      this.files.set(name, this.open);
      this.is(this.open, name);
    },
    "open a kept one": async (at) => {
      const all = await this.store.all();
      const entry = all[at % Math.max(1, all.length)];
      if (!entry || entry.id === this.keeper.id) return;
      await this.keeper.opened(entry.name, bytes, { entry });
      this.is(this.entries.get(entry.id) ?? "", entry.name, entry.isSample);
    },
    forget: async (at) => {
      const all = (await this.store.all()).filter(({ id }) => id !== this.keeper.id);
      const entry = all[at % Math.max(1, all.length)];
      if (!entry) return;
      await forgetKept(entry, this.store, this.kept.forget);
      const which = this.entries.get(entry.id) ?? "";
      const isNowhere = which.startsWith("new ") && ![...this.files.values()].includes(which);
      if (isNowhere) this.typed.delete(which);
    },
    reload: async () => {
      this.keeper.remember();
      this.keeper = this.newKeeper();
      const found = await toOpen(this.store, { read: () => this.tab, note: () => undefined });
      if (found.what !== "kept") {
        this.is("example", sample, true);
        return;
      }
      const { entry } = found.kept;
      await this.keeper.opened(entry.name, bytes, { entry });
      this.is(this.entries.get(entry.id) ?? "", entry.name, entry.isSample);
    },
    "begin with the example": async () => {
      await this.keeper.drop();
      this.tab = { id: "", isOpening: false };
      this.keeper = this.newKeeper();
      this.is("example", sample, true);
    },
  };

  static readonly acts = Object.keys(new Day().acts);

  async do(act: string, at: number): Promise<void> {
    await this.acts[act]?.(at);
    this.entries.set(this.keeper.id, this.open);
    const { drafts, memory } = this.kept.of(this.keeper.drafts);
    const wanted = this.typed.get(this.open);
    expect(await memory.read("batch")).toBe(wanted);
    const ids = (await drafts.all()).map(({ draft }) => draft.id);
    if (wanted === undefined) expect(ids).toEqual([]);
    else expect(ids).toContain(wanted);
  }
}

describe("the drafts of a workbook", () => {
  const { empty, ...globals } = databaseInMemory();
  beforeAll(() => {
    for (const [each, stands] of Object.entries(globals)) vi.stubGlobal(each, stands);
  });
  afterAll(() => {
    vi.unstubAllGlobals();
  });

  it("are beside that workbook and no other, whatever is done with files", async () => {
    const step = fc.tuple(fc.constantFrom(...Day.acts), fc.nat({ max: 40 }));
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 40, size: "max" }), async (steps) => {
        empty();
        const day = new Day();
        for (const [act, at] of steps) await day.do(act, at);
      }),
    );
  });

  it("are known where an earlier build kept the workbook", () => {
    const entry = { id: "a", name: "weir 2026-11-30 1432.xlsx", keptAt: 1, size: 2 };
    expect(entryFrom(entry)?.drafts).toBe("file/weir.xlsx");
    expect(entryFrom({ ...entry, drafts: 5 })?.drafts).toBe("file/weir.xlsx");
    expect(entryFrom({ ...entry, isSample: true })?.drafts).toBe("");
    expect(entryFrom({ ...entry, drafts: "new/1" })?.drafts).toBe("new/1");
  });
});

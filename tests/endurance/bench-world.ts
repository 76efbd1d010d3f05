/** The titration under way, as the pane keeps it, beside the model of it. */
import assert from "node:assert/strict";
import { type Keeper, keeper } from "../../src/taskpane/titrate/drafts/keeper";
import { memoryDrafts } from "../taskpane/titrate/drafts-in-memory";
import type { DraftStore, Kept } from "../../src/taskpane/titrate/drafts/store";
import { type Draft, newDraft } from "../../src/taskpane/titrate/draft";
import { outdated } from "../../src/taskpane/titrate/lots-kept";
import { type Bench, type BenchAction, benchWith, step } from "../../src/taskpane/titrate/undo";
import type { Chance } from "./chance";
import { copyOf, emptySlip, nextSlip, ofDraft, ofSlip, type Slip } from "./slip-model";

export const today = "2026-09-30";

/** A slip in the browser's storage, as the model knows it. */
interface KeptSlip {
  readonly slip: Slip;
  readonly at: number;
}

export class BenchWorld {
  bench: Bench;
  slip: Slip;
  /** Readings before each act that can be taken back, latest last. */
  past: Pick<Slip, "titres" | "blanks">[] = [];
  readonly kept = new Map<string, KeptSlip>();
  private waiting: Slip | undefined;
  private isTouched = false;
  private isFull = false;
  private isSaidUnkept = false;
  private timers: (() => void)[] = [];
  private moment = 0;
  private count = 0;
  private readonly store: DraftStore;
  private keeping: Keeper;

  constructor(private readonly chance: Chance) {
    const drafts = memoryDrafts(() => (this.moment += 1));
    const full = (): Promise<never> => Promise.reject(new Error("the disk is full"));
    this.store = { ...drafts, keep: (draft) => (this.isFull ? full() : drafts.keep(draft)) };
    this.keeping = this.newKeeper();
    const id = this.newId();
    this.bench = benchWith(newDraft(id, today));
    this.slip = emptySlip(id);
  }

  private newId = (): string => `slip-${String((this.count += 1))}`;

  private newKeeper(): Keeper {
    this.timers = [];
    const later = {
      after: (_: number, run: () => void) => {
        this.timers.push(run);
        return () => {
          this.timers = this.timers.filter((each) => each !== run);
        };
      },
    };
    return keeper(this.store, later, (isSo) => (this.isSaidUnkept = isSo));
  }

  /** The disk is full for what follows, or is not. */
  fill(isFull: boolean): void {
    this.isFull = isFull;
  }

  private modelKeeps(slip: Slip): void {
    if (this.waiting?.id === slip.id) this.waiting = undefined;
    if (this.isFull) return;
    this.kept.set(slip.id, { slip: copyOf(slip), at: this.moment + 1 });
  }

  /** One act on the bench, in the pane and in the model. */
  async act(action: BenchAction, onSlip: (slip: Slip) => void): Promise<void> {
    this.bench = step(this.bench, action);
    const isTyping = action.do === "type" || action.do === "pick" || action.do === "write";
    if (isTyping) this.slip.isRecorded = false;
    onSlip(this.slip);
    if (action.do !== "go") this.isTouched = true;
    if (this.isTouched) await this.keep(isTyping);
    this.check();
  }

  private async keep(isTyping: boolean): Promise<void> {
    const { draft } = this.bench;
    if (isTyping) {
      this.keeping.soon(draft);
      this.waiting = copyOf(this.slip);
      return;
    }
    this.modelKeeps(this.slip);
    await this.keeping.now(draft);
    assert.equal(this.isSaidUnkept, this.isFull);
  }

  /** The pause after typing is over. */
  async settle(): Promise<void> {
    const runs = this.timers.splice(0);
    if (this.waiting) this.modelKeeps(this.waiting);
    this.waiting = undefined;
    for (const run of runs) run();
    await this.keeping.now();
  }

  check(): void {
    assert.deepEqual(JSON.parse(ofDraft(this.bench.draft)), JSON.parse(ofSlip(this.slip)));
    assert.equal(this.bench.past.length, this.past.length);
  }

  /** What is in storage is what the model says, no more and no less. */
  async checkStore(): Promise<readonly Kept[]> {
    const found = await this.store.all();
    const stored = new Map(found.map(({ draft }) => [draft.id, ofDraft(draft)]));
    const wanted = [...this.kept.values()].map(({ slip }) => [slip.id, ofSlip(slip)] as const);
    assert.deepEqual([...stored].sort(), wanted.sort());
    return found;
  }

  private show(draft: Draft, slip: Slip, isTouched: boolean): void {
    this.bench = benchWith(draft);
    this.slip = slip;
    this.past = [];
    this.isTouched = isTouched;
  }

  /** The page closes at any moment, in peace or by a crash, and opens again. */
  async reload(how: "closed" | "crashed"): Promise<void> {
    if (how === "closed") await this.settle();
    this.waiting = undefined;
    this.keeping = this.newKeeper();
    const found = await this.checkStore();
    for (const { draft } of outdated(found)) await this.keeping.forget(draft.id);
    this.modelForgets();
    const left = await this.checkStore();
    const open = left.filter(({ draft }) => !draft.isRecorded);
    if (open.length === 0) this.begin(left[0]?.draft, false);
    else this.takeUp(this.chance.of(open).draft);
  }

  /** Of those recorded the latest five stay at hand. */
  private modelForgets(): void {
    const recorded = [...this.kept.values()].filter(({ slip }) => slip.isRecorded);
    recorded.sort((one, other) => other.at - one.at);
    for (const { slip } of recorded.slice(5)) this.kept.delete(slip.id);
  }

  takeUp(draft: Draft): void {
    const slip = this.kept.get(draft.id)?.slip;
    if (!slip) throw new Error(`the model never kept ${draft.id}`);
    this.show(draft, copyOf(slip), true);
    this.check();
  }

  /** Another lot: begun anew, or one that lies in storage. */
  async toAnother(): Promise<void> {
    await this.settle();
    const found = await this.checkStore();
    if (found.length > 0 && this.chance.is(0.4)) this.takeUp(this.chance.of(found).draft);
    else this.begin(this.bench.draft, true);
  }

  /** The next titration on the same bench. */
  async next(): Promise<void> {
    await this.settle();
    this.begin(this.bench.draft, true);
  }

  /** @param isHere the one before is the one under way, not one out of storage */
  private begin(after: Draft | undefined, isHere: boolean): void {
    const id = this.newId();
    const former = after && (isHere ? this.slip : this.kept.get(after.id)?.slip);
    this.show(newDraft(id, today, after), former ? nextSlip(id, former) : emptySlip(id), false);
    this.check();
  }
}

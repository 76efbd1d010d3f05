/**
 * The open workbook and its file: what the grid held when they last agreed, and the worker with the
 * bytes. The sample's file is fetched when it is first asked for.
 */
import { isRefused, type Refusal, refused } from "../../sheet/refusal";
import type { Edit, StructuralAct } from "../../xlsx";
import type { Answer, Asked, Beyond, Restructured, Saved } from "./asked";
import { changedBy } from "../acts/changed-by";
import { type Edits, editsOf, type FileTerms } from "./edits-of";
import { FileWorker } from "./file-worker";
import type { GridState } from "./grid-state";
import { arraysOf, type FileArrays, type OpenedFile } from "./opened-file";
import { pixelsPerCharacter } from "./row-heights";
import { withoutHeld } from "../holding/without-held";

/** The sample's file; undefined when it does not come. */
export type Fetched = () => Promise<Uint8Array | undefined>;

/** Where the bytes are: the worker. */
export interface Holder {
  ask<Ask extends Asked>(asked: Ask): Promise<Answer<Ask["ask"]>>;
  close(): void;
}

type Affected = NonNullable<FileTerms["affected"]>;

export interface Writing extends Saved {
  readonly edits: Edits;
  /** Rows, columns or sheets were inserted, deleted, moved or renamed since it was saved last. */
  readonly isRestructured: boolean;
}

/** What is asked of the open file beside edits. */
export type ActAsked =
  | { readonly ask: "act"; readonly act: StructuralAct; readonly says: string }
  | {
      readonly ask: "back" | "forth";
      /** What the grid held before it took back what was typed since the file was shown. */
      readonly beyond: GridState | undefined;
      /** Of what was typed since, the oldest was not taken back: the grid has no steps for it any more. */
      readonly isCut: boolean;
    };

export interface Coming extends Restructured {
  /** What the grid held when it agreed with the file before. */
  readonly before: GridState;
}

const charactersOf = (pixels: number): number => pixels / pixelsPerCharacter;

const termsOf = (file: OpenedFile, affected: Affected): FileTerms => ({
  dates: file.dates,
  arrays: arraysOf(file),
  charactersOf,
  affected,
});

export class Session {
  private isRestructured = false;
  /** What the grid held when the file was shown. */
  private shown: GridState;
  /** What its formulas came to there, where the file has results of before an act. */
  private settled: GridState | undefined;

  private constructor(
    public name: string,
    private worker: Holder | undefined,
    private before: GridState,
    private terms: FileTerms,
    private readonly fetched?: Fetched,
  ) {
    this.shown = before;
  }

  /** @param before what the grid held once the file was laid out and worked out */
  static ofFile(
    name: string,
    worker: Holder,
    file: OpenedFile,
    before: GridState,
    affected: Affected,
  ): Session {
    return new Session(name, worker, before, termsOf(file, affected));
  }

  /** @param before what the grid held once the sample was worked out */
  static ofSample(name: string, fetched: Fetched, before: GridState, affected: Affected): Session {
    const terms = { dates: 1900, arrays: new Map(), charactersOf, affected } as const;
    return new Session(name, undefined, before, terms, fetched);
  }

  /** The worker with the file. */
  private async file(): Promise<Holder | Refusal> {
    if (this.worker || !this.fetched) return this.worker ?? refused("No file is open.");
    const bytes = await this.fetched();
    if (!bytes) return refused("The sample's own file could not be fetched: try again.");
    const worker = new FileWorker();
    const made = await worker.ask({ ask: "open", bytes });
    if (isRefused(made)) {
      worker.close();
      return made;
    }
    this.terms = { ...this.terms, arrays: arraysOf(made.is) };
    this.worker = worker;
    return worker;
  }

  /**
   * The file as it would be saved, read back and found right.
   * @param ask "try" where it is not saved, but handed on or kept
   */
  async written(now: GridState, ask: "save" | "try" = "save"): Promise<Writing | Refusal> {
    const worker = await this.file();
    if (isRefused(worker)) return worker;
    const edits = editsOf(this.before, now, this.terms);
    const saved = await worker.ask({ ask, edits: edits.edits });
    const { isRestructured } = this;
    return isRefused(saved) ? saved : { ...saved.is, edits, isRestructured };
  }

  /** The file after an act, with what was edited; the open one stays until it is shown. */
  async restructured(now: GridState, asked: ActAsked): Promise<Coming | Refusal> {
    const worker = await this.file();
    if (isRefused(worker)) return worker;
    const { edits } = editsOf(this.before, now, this.terms);
    const isCounted = asked.ask === "act" || asked.isCut;
    const typed = {
      edits,
      cells: isCounted ? this.changed(now, edits) : undefined,
      settled: isCounted ? this.settling() : [],
    };
    const made = await worker.ask(
      asked.ask === "act"
        ? { ...asked, ...typed }
        : { ask: asked.ask, ...typed, beyond: this.beyond(asked.beyond) },
    );
    if (isRefused(made)) return made;
    return { ...made.is, before: edits.length === 0 ? this.before : withoutHeld(now) };
  }

  /** In how many cells somebody changed something since the file was shown. */
  private changed(now: GridState, edits: readonly Edit[]): number | undefined {
    const isSame = this.before === this.shown;
    return changedBy(isSame ? edits : editsOf(this.shown, now, this.terms).edits);
  }

  /** The results that the file lacked when it was shown. */
  private settling(): readonly Edit[] {
    return this.settled ? editsOf(this.shown, this.settled, this.terms).edits : [];
  }

  private beyond(now: GridState | undefined): Beyond | undefined {
    if (!now) return undefined;
    const { edits } = editsOf(this.before, now, this.terms);
    return { edits, cells: this.changed(now, edits) };
  }

  /**
   * It is shown: from now on it is the file.
   * @param before what it holds itself
   * @param shown what the grid holds, worked out
   */
  async took(
    opened: OpenedFile,
    before: GridState,
    shown: GridState,
    affected: Affected,
  ): Promise<void> {
    await this.worker?.ask({ ask: "took" });
    this.before = this.shown = before;
    this.settled = before === shown ? undefined : shown;
    this.terms = termsOf(opened, affected);
    this.isRestructured = true;
  }

  /** From now on, what was written last is the file. */
  async keep(now: GridState, arrays: FileArrays): Promise<void> {
    await this.worker?.ask({ ask: "keep" });
    this.before = withoutHeld(now);
    this.isRestructured = false;
    this.terms = { ...this.terms, arrays };
  }

  /** Nothing that was before now can be gone back to any more. */
  async forget(): Promise<void> {
    await this.worker?.ask({ ask: "forget" });
    this.shown = this.before;
    this.settled = undefined;
  }

  close(): void {
    this.worker?.close();
  }
}

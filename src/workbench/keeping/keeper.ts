/**
 * Keeps the open workbook in the browser: the file as it would be saved, at a pause after edits. Nothing
 * is said to be kept before it is.
 */
import { isRefused } from "../../sheet/refusal";
import { type Book, entryOf, exampleBook, fileBook, keptBook, makeMine } from "./book";
import type { Entry } from "./entry";
import type { Origin } from "./origin";
import type { FileOnDisk } from "./file-on-disk";
import type { Hold } from "./hold";
import { notKeptWords } from "./not-kept-words";
import { doneWithin, patienceWithKeeping, patienceWithTyping } from "./patience";
import { Pause } from "./pause";
import { type Standing, standingOf } from "./standing";
import type { KeptWorkbooks } from "./store";
import type { Surroundings, Writer } from "./surroundings";
import type { TabMemory } from "./tab-memory";

export class Keeper {
  private book: Book;
  /** The example, and nothing of it kept or saved. */
  private isNew = true;
  /** Edits when it was kept last. */
  private kept: number;
  private running: Promise<unknown> = Promise.resolve();
  private writer: Writer | undefined;
  private hasRefused = false;
  private coming: Entry | undefined;
  private isDropped = false;
  /** Another tab has this workbook open, or one of its name. */
  isElsewhere = false;
  private readonly pause = new Pause(
    (since) =>
      this.writer?.isBusy !== false || (this.page.isTyping() && since < patienceWithTyping),
    () => void this.now(),
  );

  constructor(
    readonly store: KeptWorkbooks,
    readonly hold: Hold,
    private readonly memory: TabMemory,
    private readonly page: Surroundings,
    example: string,
  ) {
    this.book = exampleBook(example);
    this.kept = page.edited.count;
    page.edited.watch(() => {
      if (this.kept !== page.edited.count) this.pause.edit();
    });
  }

  follow(writer: Writer): void {
    this.writer = writer;
  }

  get standing(): Standing {
    const { isInFile } = this.book;
    const { edited } = this.page;
    const isKept = this.kept === edited.count;
    return standingOf({ isInFile, isNew: this.isNew, isEdited: edited.now, isKept });
  }

  /** The page may be left, or another workbook opened, and nothing is lost. */
  get isSafe(): boolean {
    return this.standing !== "not kept";
  }

  get isSample(): boolean {
    return this.book.isSample;
  }

  get id(): string {
    return this.book.id;
  }

  /** Whose drafts the pane offers. */
  get drafts(): string {
    return this.book.drafts;
  }

  get disk(): FileOnDisk | undefined {
    return this.book.disk;
  }

  /** Keeps what was edited. False when it could not: then it is nowhere but on the page. */
  now(): Promise<boolean> {
    return this.alone(async () => {
      if (this.isSafe) return true;
      const { count } = this.page.edited;
      const began = performance.now();
      const bytes = await this.writer?.bytes();
      if (!bytes || isRefused(bytes)) {
        this.refuse(`${this.book.name} cannot be kept in this browser. ${bytes?.sentence ?? ""}`);
        return false;
      }
      const isKept = await this.put(bytes, count, false);
      this.pause.took(performance.now() - began);
      return isKept && this.isSafe;
    });
  }

  /** Resolves when nothing is being kept. */
  settled(): Promise<unknown> {
    return this.running;
  }

  /** Another workbook is open. */
  async opened(name: string, bytes: Uint8Array, { entry, disk, isNew }: Origin): Promise<void> {
    this.pause.end();
    await this.running;
    const { count } = this.page.edited;
    const opened = await (entry ? keptBook(entry, this) : fileBook(name, disk, this, !isNew));
    this.book = opened.book;
    this.isElsewhere = opened.isElsewhere;
    this.isNew = false;
    this.kept = entry ? count : count - 1;
    if (!entry) await this.alone(() => this.put(bytes, count, opened.book.isInFile));
    else if (!this.isElsewhere) await this.store.setOpen(entry.id).catch(() => undefined);
  }

  /**
   * It was written into a file. Resolves when the browser has it too, or is late with it: said before,
   * a page loaded anew would open what was kept earlier, and call that saved.
   * @param count edits that went into it
   */
  saved(name: string, bytes: Uint8Array, count: number, disk?: FileOnDisk): Promise<void> {
    const { isSample } = this.book;
    Object.assign(this.book, { name, disk, isInFile: true, isSample: isSample && !disk });
    const put = this.alone(() => this.put(bytes, count, true));
    return doneWithin(patienceWithKeeping, put);
  }

  /** The next save asks for a file. */
  forgetDisk(): void {
    this.book.disk = undefined;
  }

  /** From now on the example is what this browser opens with. */
  async drop(): Promise<void> {
    this.memory.note({ id: "", isOpening: false });
    this.isDropped = true;
    this.hold.letGo();
    await this.store.setOpen("").catch(() => undefined);
  }

  /** It is about to be opened, and may stop the tab: then it is not opened by itself again. */
  comes(entry: Entry | undefined): void {
    this.coming = entry;
    if (entry) this.memory.note({ id: entry.id, place: entry.place, isOpening: true });
    else this.remember();
  }

  /** What this tab has open and where one is, for when the page is loaded again. */
  remember(): void {
    if (this.isDropped) return;
    const { coming, isNew, book } = this;
    const id = coming?.id ?? (isNew ? "" : book.id);
    this.memory.note({ id, place: coming?.place ?? this.page.place(), isOpening: false });
  }

  /** Once, until it went well again. */
  private refuse(sentence: string): void {
    if (!this.hasRefused) this.page.refuse(sentence);
    this.hasRefused = true;
  }

  /** Nothing is kept meanwhile. */
  alone<T>(work: () => Promise<T>): Promise<T> {
    const next = this.running.then(work);
    this.running = next.catch(() => undefined);
    return next;
  }

  private async put(bytes: Uint8Array, count: number, isInFile: boolean): Promise<boolean> {
    const { book } = this;
    try {
      await makeMine(book, this);
      const keptAt = Date.now();
      const now = { keptAt, size: bytes.length, isInFile };
      await this.store.put(entryOf(book, now, this.page.place()), bytes);
      Object.assign(book, { from: keptAt, isInFile });
    } catch (error) {
      this.refuse(notKeptWords(book.name, error));
      return false;
    }
    this.hasRefused = false;
    if (this.book !== book) return true;
    this.isNew = false;
    this.kept = count;
    this.remember();
    this.writer?.named();
    return true;
  }
}

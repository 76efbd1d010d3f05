/** The open workbook, as it is kept: under which id, and whether that is this tab's to write. */
import type { CellPlace } from "../../sheet/area";
import { draftsOfExample, draftsOfFile, draftsOfNew } from "./drafts-of";
import { type Entry, replacedBy } from "./entry";
import type { FileOnDisk } from "./file-on-disk";
import type { Hold } from "./hold";
import type { KeptWorkbooks } from "./store";

export interface Book {
  id: string;
  name: string;
  /** Whose drafts the pane offers: the id may change, this does not. */
  readonly drafts: string;
  isSample: boolean;
  /** What was opened or saved last is in a file. */
  isInFile: boolean;
  disk?: FileOnDisk | undefined;
  /** When that was kept of which this was made; undefined for what was not kept before. */
  from?: number | undefined;
}

const newId = (): string => `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;

export const exampleBook = (name: string): Book => ({
  id: newId(),
  name,
  drafts: draftsOfExample,
  isSample: true,
  isInFile: false,
});

interface Shelf {
  readonly hold: Hold;
  readonly store: Pick<KeptWorkbooks, "all" | "entry" | "draftsOf">;
}

interface Opened {
  readonly book: Book;
  /** Another tab has it open, or one of its name. */
  readonly isElsewhere: boolean;
}

/** A workbook that was kept: its file is written by the tab that has it. */
export async function keptBook(entry: Entry, { hold }: Shelf): Promise<Opened> {
  const { id, name, drafts, isInFile, isSample, keptAt, disk } = entry;
  const isMine = await hold.take(id);
  const its = { id, name, drafts, isInFile, isSample };
  const book = { ...its, from: keptAt, disk: isMine ? disk : undefined };
  return { book, isElsewhere: !isMine };
}

/** A file: it takes the place of what was kept of it before. @param isInFile not made here just now */
export async function fileBook(
  name: string,
  disk: FileOnDisk | undefined,
  { hold, store }: Shelf,
  isInFile: boolean,
): Promise<Opened> {
  const all = await store.all().catch(() => []);
  const elsewhere = await hold.elsewhere();
  const before = isInFile ? replacedBy(all, name) : undefined;
  const isMine = before !== undefined && (await hold.take(before.id));
  // the example saved into the downloads is called as many a workbook is: that one is not the example
  const its = before && !before.isSample ? before.drafts : undefined;
  const drafts = isInFile
    ? (its ?? (await store.draftsOf(name).catch(() => undefined)) ?? draftsOfFile(name))
    : draftsOfNew(newId());
  const known = isMine ? { id: before.id, from: before.keptAt } : { id: newId() };
  return {
    book: { ...known, name, drafts, isInFile, isSample: false, disk },
    isElsewhere: all.some((each) => each.name === name && elsewhere.has(each.id)),
  };
}

/** What another tab has open, or has kept since, is not written over: this becomes one of its own. */
export async function makeMine(book: Book, { hold, store }: Shelf): Promise<void> {
  const isMine = await hold.take(book.id);
  const there = isMine ? await store.entry(book.id) : undefined;
  if (isMine && (there === undefined || there.keptAt === book.from)) return;
  book.id = newId();
  book.disk = undefined;
  await hold.take(book.id);
}

/** What is put down of it. */
export const entryOf = (
  { id, name, drafts, isSample, disk }: Book,
  now: Pick<Entry, "keptAt" | "size" | "isInFile">,
  place: CellPlace | undefined,
): Entry => ({
  id,
  name,
  drafts,
  isSample,
  ...now,
  ...(place ? { place } : {}),
  ...(disk ? { disk } : {}),
});

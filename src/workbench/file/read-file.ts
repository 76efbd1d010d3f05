/** A file somebody chose, read by a worker of its own; or the sentence that says why not. */
import { isRefused, type Refusal, refused } from "../../sheet/refusal";
import { FileWorker } from "./file-worker";
import type { OpenedFile } from "./opened-file";

/** What a logbook of one's own is saved as at first. */
const ownFile = "my-logbook.xlsx";

/** An empty logbook of somebody's own, as a file that is nowhere yet. */
export async function newFile(): Promise<File | Refusal> {
  const worker = new FileWorker();
  const made = await worker.ask({ ask: "new" });
  worker.close();
  return isRefused(made) ? made : new File([made.is as BlobPart], ownFile);
}

/** Larger files are refused unread. */
const mostBytes = 100 * 1024 * 1024;

export interface ReadFile {
  readonly worker: FileWorker;
  readonly opened: OpenedFile;
  readonly bytes: Uint8Array;
}

const notOpened = (sentence: string): Refusal =>
  refused(`${sentence} The workbook before it is still open.`);

const unshowable = ({ sheets }: OpenedFile): string | undefined =>
  sheets.some(({ kind, state }) => kind === "cells" && state === "visible")
    ? undefined
    : "It has no sheet of cells that could be shown.";

export async function readFile(file: File): Promise<ReadFile | Refusal> {
  const { name } = file;
  if (file.size > mostBytes) return notOpened(`${name} is larger than 100 MB: split it.`);
  const buffer = await file.arrayBuffer().catch(() => undefined);
  if (!buffer) return notOpened(`${name} could not be read from the disk: it may have been moved.`);
  const bytes = new Uint8Array(buffer);
  const worker = new FileWorker();
  const read = await worker.ask({ ask: "open", bytes });
  const why = isRefused(read) ? read.sentence : unshowable(read.is);
  if (!isRefused(read) && why === undefined) return { worker, opened: read.is, bytes };
  worker.close();
  return notOpened(`${name} was not opened. ${why ?? ""}`);
}

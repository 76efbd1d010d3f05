/** A file somebody chose, read by a worker of its own; or the sentence that says why not. */
import { isRefused } from "./session";
import { FileWorker } from "./file-worker";
import type { OpenedFile } from "./opened-file";

/** Larger files are refused unread. */
const mostBytes = 100 * 1024 * 1024;

export interface ReadFile {
  readonly worker: FileWorker;
  readonly opened: OpenedFile;
}

const refused = (sentence: string) => ({
  refused: `${sentence} The workbook before it is still open.`,
});

const unshowable = ({ sheets }: OpenedFile): string | undefined =>
  sheets.some(({ kind, state }) => kind === "cells" && state === "visible")
    ? undefined
    : "It has no sheet of cells that could be shown.";

export async function readFile(file: File): Promise<ReadFile | { readonly refused: string }> {
  const { name } = file;
  if (file.size > mostBytes) return refused(`${name} is larger than 100 MB: split it.`);
  const bytes = await file.arrayBuffer().catch(() => undefined);
  if (!bytes) return refused(`${name} could not be read from the disk: it may have been moved.`);
  const worker = new FileWorker();
  const read = await worker.ask({ ask: "open", bytes: new Uint8Array(bytes) });
  const why = isRefused(read) ? read.refused : unshowable(read.is);
  if (!isRefused(read) && why === undefined) return { worker, opened: read.is };
  worker.close();
  return refused(`${name} was not opened. ${why ?? ""}`);
}

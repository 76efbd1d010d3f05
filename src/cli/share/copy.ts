/**
 * Makes the copy: read, converted, written under another name beside its place, opened again, and only
 * then given its name. Whatever fails, the file that was read and one that was there are as before.
 */
import { basename, dirname, join } from "node:path";
import { leftWords, reportWords, shareWorkbook, type Shared } from "../../partner/sharing";
import { isFileProblem, openXlsx, sayFile } from "../../xlsx";
import type { Files } from "./files";
import type { Request } from "./request";

export interface Outcome {
  readonly isDone: boolean;
  readonly lines: readonly string[];
}

const failed = (line: string): Outcome => ({ isDone: false, lines: [line] });

const codeOf = (thrown: unknown): string => (thrown as NodeJS.ErrnoException).code ?? "";

const whyNotRead: Readonly<Record<string, (path: string) => string>> = {
  ENOENT: (path) => `There is no file ${path}.`,
  EISDIR: (path) => `${path} is a folder, not a workbook.`,
  EACCES: (path) => `${path} may not be read by this account.`,
};

const whyNotWritten: Readonly<Record<string, (folder: string) => string>> = {
  ENOENT: (folder) => `There is no folder ${folder}: make it first.`,
  ENOTDIR: (folder) => `${folder} is not a folder.`,
  EACCES: (folder) => `The folder ${folder} may not be written to.`,
  EPERM: (folder) => `The folder ${folder} may not be written to.`,
  EROFS: (folder) => `The folder ${folder} can only be read.`,
  ENOSPC: (folder) => `The disk of ${folder} is full: nothing was written.`,
  EDQUOT: (folder) => `There is no room left for this account in ${folder}: nothing was written.`,
  EFBIG: (folder) => `The copy is larger than a file in ${folder} can be: nothing was written.`,
  ENAMETOOLONG: () => "The name of the copy is too long for this disk.",
};

const otherwise = (thrown: unknown): string =>
  thrown instanceof Error ? thrown.message : "no reason was given";

/** A sentence when the place of the copy cannot be taken. */
function refusal({ from, to, mayReplace }: Request, files: Files): string | undefined {
  const source = files.kindOf(from);
  const target = files.kindOf(to);
  if (!target) return undefined;
  if (source && source.id !== "" && source.id === target.id) {
    return `${to} is the file the copy is made from: give the copy another name.`;
  }
  if (!target.isFile) return `${to} is there already, and it is not a file.`;
  return mayReplace ? undefined : `${to} is there already: add --force to write over it.`;
}

function readSource(path: string, files: Files): Uint8Array | string {
  try {
    return files.read(path);
  } catch (thrown) {
    return whyNotRead[codeOf(thrown)]?.(path) ?? `${path} cannot be read: ${otherwise(thrown)}.`;
  }
}

/** Is what stands on the disk the copy, and can it be opened? */
function refuseUnsound(path: string, { bytes }: Shared, files: Files): string | undefined {
  const back = files.read(path);
  const isSame = back.length === bytes.length && back.every((byte, at) => byte === bytes[at]);
  if (!isSame) return "What the disk holds is not what was written: nothing was changed.";
  const opened = openXlsx(back);
  return isFileProblem(opened) ? `The copy cannot be opened again: ${sayFile(opened)}` : undefined;
}

/** A sentence when the copy could not be put in its place. */
function write(request: Request, shared: Shared, files: Files, mark: string): string | undefined {
  const { to, mayReplace } = request;
  const folder = dirname(to);
  const temporary = join(folder, `.${basename(to)}.${mark}.part`);
  let isThere = false;
  try {
    isThere = true;
    files.create(temporary, shared.bytes);
    const unsound = refuseUnsound(temporary, shared, files);
    if (unsound !== undefined) return unsound;
    if (mayReplace) files.nameOver(temporary, to);
    else files.nameNew(temporary, to);
    isThere = false;
    return undefined;
  } catch (thrown) {
    const code = codeOf(thrown);
    if (code === "EEXIST") return `${to} is there already: add --force to write over it.`;
    return whyNotWritten[code]?.(folder) ?? `${to} cannot be written: ${otherwise(thrown)}.`;
  } finally {
    if (isThere) removeQuietly(temporary, files);
  }
}

/** It may not even have come to be. */
function removeQuietly(path: string, files: Files): void {
  try {
    files.remove(path);
  } catch {
    // The sentence that is on its way says what matters.
  }
}

/** @param mark makes the temporary name one of a kind */
export function makeCopy(request: Request, files: Files, mark: string): Outcome {
  const refused = refusal(request, files);
  if (refused !== undefined) return failed(refused);
  const bytes = readSource(request.from, files);
  if (typeof bytes === "string") return failed(bytes);
  const shared = shareWorkbook(bytes, { kind: request.kind, fileName: basename(request.from) });
  if (isFileProblem(shared)) return failed(sayFile(shared));
  const unwritten = write(request, shared, files, mark);
  if (unwritten !== undefined) return failed(unwritten);
  const { report } = shared;
  return {
    isDone: true,
    lines: [`Written: ${request.to}`, ...reportWords(report), ...report.left.map(leftWords)],
  };
}

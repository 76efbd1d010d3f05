/** The file system as far as it is needed, so that a test can have any step of it fail. */
import {
  closeSync,
  fsyncSync,
  linkSync,
  lstatSync,
  openSync,
  readFileSync,
  renameSync,
  statSync,
  unlinkSync,
  writeSync,
} from "node:fs";

export interface Files {
  read(path: string): Uint8Array;
  /** A new file, on the disk when this returns; fails when it is there already. */
  create(path: string, bytes: Uint8Array): void;
  /** Gives a file another name; fails when something of that name is there. */
  nameNew(from: string, to: string): void;
  /** Gives a file another name, in place of what has it. */
  nameOver(from: string, to: string): void;
  remove(path: string): void;
  /** What is there: a file by its number on its disk; undefined where there is nothing. */
  kindOf(path: string): { readonly isFile: boolean; readonly id: string } | undefined;
}

function writeWhole(file: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length;) done += writeSync(file, bytes, done);
  fsyncSync(file);
}

/** What cannot be looked at is told by the step that needs it. */
function isThere(path: string): boolean {
  try {
    return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
  } catch {
    return false;
  }
}

function followed(path: string) {
  try {
    return statSync(path, { throwIfNoEntry: false, bigint: true });
  } catch {
    return undefined;
  }
}

const cannotLink = ["EPERM", "ENOSYS", "ENOTSUP", "EOPNOTSUPP", "EXDEV"];

export const diskFiles: Files = {
  read: (path) => new Uint8Array(readFileSync(path)),
  create(path, bytes) {
    const file = openSync(path, "wx");
    try {
      writeWhole(file, bytes);
    } finally {
      closeSync(file);
    }
  },
  nameNew(from, to) {
    try {
      linkSync(from, to);
    } catch (failed) {
      const code = (failed as NodeJS.ErrnoException).code ?? "";
      // Some disks know no second name for a file: there it is looked for, and then renamed.
      if (!cannotLink.includes(code) || diskFiles.kindOf(to)) throw failed;
      renameSync(from, to);
      return;
    }
    unlinkSync(from);
  },
  nameOver: renameSync,
  remove: unlinkSync,
  kindOf(path) {
    if (!isThere(path)) return undefined;
    const found = followed(path);
    // A link that leads nowhere is something all the same.
    if (!found) return { isFile: true, id: "" };
    return { isFile: found.isFile(), id: `${String(found.dev)}:${String(found.ino)}` };
  },
};

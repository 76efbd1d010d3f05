/** A file that the browser may write into, and what it was like when it was read or written last. */
import { isObject } from "../../taskpane/drafts/believed";

export interface Stamp {
  readonly lastModified: number;
  readonly size: number;
}

export interface FileOnDisk {
  readonly handle: FileSystemFileHandle;
  readonly stamp: Stamp;
}

export const stampOf = ({ lastModified, size }: Stamp): Stamp => ({ lastModified, size });

export const isSameStamp = (a: Stamp, b: Stamp): boolean =>
  a.lastModified === b.lastModified && a.size === b.size;

const isHandle = (value: unknown): value is FileSystemFileHandle =>
  typeof globalThis.FileSystemFileHandle === "function" &&
  value instanceof globalThis.FileSystemFileHandle;

/** As it was kept. */
export function fileFrom(value: unknown): FileOnDisk | undefined {
  if (!isObject(value) || !isHandle(value.handle) || !isObject(value.stamp)) return undefined;
  const { lastModified, size } = value.stamp;
  return typeof lastModified === "number" && typeof size === "number"
    ? { handle: value.handle, stamp: { lastModified, size } }
    : undefined;
}

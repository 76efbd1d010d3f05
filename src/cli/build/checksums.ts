/** A list of SHA-256 sums as `sha256sum -c` reads it. */
import { createHash } from "node:crypto";

export const checksumOf = (content: Uint8Array): string =>
  createHash("sha256").update(content).digest("hex");

/** One line a file, in the order of their names. */
export const checksumList = (files: ReadonlyMap<string, Uint8Array>): string =>
  [...files]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, content]) => `${checksumOf(content)}  ${name}\n`)
    .join("");

export interface Checksum {
  readonly name: string;
  readonly sum: string;
}

export const readChecksums = (list: string): Checksum[] =>
  [...list.matchAll(/^([0-9a-f]{64}) {2}(.+)$/gm)].map(([, sum = "", name = ""]) => ({
    name,
    sum,
  }));

/**
 * A workbook file as its parts: read on demand, changed by name. What nobody changed is never even
 * unpacked, and goes into the new file as it was packed.
 */
import { limits } from "../limits";
import { refuse } from "../problem";
import { type Directory, type Entry, readDirectory } from "../zip/directory";
import { isPackedAlike, isPackedToHarm, unpack } from "../zip/unpack";
import { writeZip } from "../zip/write";
import { refuseOtherFiles } from "./refused-kinds";

const utf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

function decoded(part: string, bytes: Uint8Array): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    refuse({ code: "other-encoding", part, encoding: "UTF-16" });
  }
  try {
    return utf8.decode(bytes);
  } catch {
    return refuse({ code: "damaged", part, detail: "it is not UTF-8" });
  }
}

/** The size of all parts together, unpacked. */
function refuseTooLarge(entries: readonly Entry[]): number {
  const harmful = entries.find(isPackedToHarm);
  if (harmful) refuse({ code: "packed-to-harm", part: harmful.name });
  const size = entries.reduce((sum, entry) => sum + entry.size, 0);
  if (size > limits.unpackedBytes) refuse({ code: "too-large" });
  return size;
}

/** Bytes of a part whose text is kept, in a file of so many parts: a few megabytes at most. */
const small = 32 * 1024;
const few = 200;

const refuseMissing = (part: string): never =>
  refuse({ code: "damaged", part, detail: "it is missing" });

export class Package {
  private readonly directory: Directory;
  private readonly byName: ReadonlyMap<string, Entry>;
  private readonly changed = new Map<string, string>();
  private readonly removed = new Set<string>();
  /** What parts were read as, until they change: by part, then by what it was read as. */
  private readonly read = new Map<string, Map<string, unknown>>();
  /** Bytes that may still be unpacked: a file whose parts are read over and over means harm. */
  private allowance: number;

  /**
   * The bytes are only read, ever.
   * @param earlier the file these bytes were made from: a part that is packed alike in both says the
   * same, and is not read again
   */
  constructor(
    readonly bytes: Uint8Array,
    earlier?: Package,
  ) {
    refuseOtherFiles(bytes);
    if (bytes.length > limits.unpackedBytes) refuse({ code: "too-large" });
    this.directory = readDirectory(bytes);
    this.allowance = 6 * refuseTooLarge(this.directory.entries) + limits.packedTimesFrom * 10;
    this.byName = new Map(this.directory.entries.map((entry) => [entry.name.toLowerCase(), entry]));
    if (earlier) this.takeOver(earlier);
  }

  private takeOver(earlier: Package): void {
    for (const [name, found] of earlier.read) {
      const [entry, other] = [this.entry(name), earlier.entry(name)];
      if (!entry || !other || earlier.changed.has(name) || earlier.removed.has(name)) continue;
      const isAlike = isPackedAlike(
        { bytes: this.bytes, entry },
        { bytes: earlier.bytes, entry: other },
      );
      if (isAlike && entry.name === other.name) this.read.set(name, found);
    }
  }

  /** The same file, with none of the changes made to this one. */
  fresh(): Package {
    return new Package(this.bytes, this);
  }

  /** The names of its parts, as the file now stands. */
  get names(): string[] {
    const own = this.directory.entries.map(({ name }) => name);
    const kept = own.filter((name) => !this.removed.has(name));
    return [...kept, ...[...this.changed.keys()].filter((name) => !this.entry(name))];
  }

  /** Names are told apart without regard to case. */
  private entry(name: string): Entry | undefined {
    return this.byName.get(name.toLowerCase());
  }

  private stored(name: string): string {
    return this.entry(name)?.name ?? name;
  }

  has(name: string): boolean {
    const own = this.stored(name);
    return this.changed.has(own) || (this.entry(name) !== undefined && !this.removed.has(own));
  }

  /** The text of a part; undefined when there is none of that name. */
  text(name: string): string | undefined {
    const own = this.stored(name);
    const changed = this.changed.get(own);
    if (changed !== undefined) return changed;
    const entry = this.entry(name);
    if (!entry || this.removed.has(own)) return undefined;
    const known = this.known(own, "text");
    if (known !== undefined) return known as string;
    this.allowance -= entry.size;
    if (this.allowance < 0) refuse({ code: "packed-to-harm", part: own });
    const text = decoded(own, unpack(this.bytes, entry));
    // each act looks into all of the small parts
    if (entry.size <= small && this.byName.size <= few) this.keep(own, "text", text);
    return text;
  }

  /**
   * What a part reads as, read once while it stays the same; undefined when there is none.
   * @param what tells one reader from another; it must go by the text of the part alone
   */
  parsed<T>(name: string, what: string, read: (text: string) => T): T | undefined {
    const known = this.known(name, what);
    if (known !== undefined) return known as T;
    const text = this.text(name);
    if (text === undefined) return undefined;
    const found = read(text);
    this.keep(name, what, found);
    return found;
  }

  /** What is known of a part since it was read. */
  known(name: string, what: string): unknown {
    return this.read.get(this.stored(name))?.get(what);
  }

  keep(name: string, what: string, found: unknown): void {
    const own = this.stored(name);
    this.read.set(own, (this.read.get(own) ?? new Map<string, unknown>()).set(what, found));
  }

  /** ... of a part that must be there. */
  needParsed<T>(name: string, what: string, read: (text: string) => T): T {
    return this.parsed(name, what, read) ?? refuseMissing(name);
  }

  /** The text of a part that must be there. */
  need(name: string): string {
    return this.text(name) ?? refuseMissing(name);
  }

  set(name: string, text: string): void {
    const own = this.stored(name);
    this.removed.delete(own);
    this.read.delete(own);
    this.changed.set(own, text);
  }

  remove(name: string): void {
    const own = this.stored(name);
    this.changed.delete(own);
    this.read.delete(own);
    this.removed.add(own);
  }

  /** A name of that pattern which no part has: xl/tables/table3.xml. */
  free(pattern: (number: number) => string): string {
    let number = 1;
    while (this.has(pattern(number))) number += 1;
    return pattern(number);
  }

  /** The file as it now stands; without changes, the very bytes it was read from. */
  toBytes(): Uint8Array {
    if (this.changed.size === 0 && this.removed.size === 0) return this.bytes;
    const utf8Bytes = new TextEncoder();
    const content = [...this.changed].map(
      ([name, text]) => [name, utf8Bytes.encode(text)] as const,
    );
    return writeZip(this.bytes, this.directory, {
      content: new Map(content),
      removed: this.removed,
    });
  }
}

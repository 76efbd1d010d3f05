/**
 * The file again with some entries changed, added or left out. Every other entry is copied as it
 * stands, header, packed bytes and all, in the same order; only its place in the directory moves.
 */
import { refuse } from "../problem";
import type { Directory, Entry } from "./directory";
import { longFieldAt } from "./long-fields";
import { pack, type Packed } from "./pack";

export interface Changes {
  /** New content by entry name; names the file does not have are added at the end. */
  readonly content: ReadonlyMap<string, Uint8Array>;
  readonly removed: ReadonlySet<string>;
}

const viewOf = (bytes: Uint8Array) =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** Midnight on 1 January 1980, the first the format can say. */
const firstStamp = 0x00210000;

/** Puts an offset into a directory record: in its ZIP64 field when it stands there. */
function setOffset(record: Uint8Array, offset: number): void {
  const view = viewOf(record);
  const isLong = (at: number) => view.getUint32(at, true) === 0xffffffff;
  const from = 46 + view.getUint16(28, true);
  const field = longFieldAt(view, from, from + view.getUint16(30, true));
  if (!isLong(42) || field === undefined) return view.setUint32(42, offset, true);
  view.setBigUint64(field + (isLong(24) ? 8 : 0) + (isLong(20) ? 8 : 0), BigInt(offset), true);
}

/** Where the bytes of an entry end: where the next entry, or the directory, begins. */
function spansOf({ entries, start }: Directory): (readonly [Entry, number])[] {
  const placed = [...entries].sort((a, b) => a.offset - b.offset);
  return placed.map((entry, index) => {
    const end = placed[index + 1]?.offset ?? start;
    if (end < entry.offset + 30 + entry.packedSize) {
      refuse({ code: "damaged", part: entry.name, detail: "it lies over another part" });
    }
    return [entry, end];
  });
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** The closing record, comment and what follows, for a directory of so many entries at a place. */
function closed(bytes: Uint8Array, closing: number, count: number, start: number, size: number) {
  const record = bytes.slice(closing);
  const view = viewOf(record);
  view.setUint16(8, count, true);
  view.setUint16(10, count, true);
  view.setUint32(12, size, true);
  view.setUint32(16, start, true);
  return record;
}

/** New bytes; those given are only read. */
export function writeZip(bytes: Uint8Array, directory: Directory, changes: Changes): Uint8Array {
  const view = viewOf(bytes);
  const stampOf = (entry: Entry | undefined) =>
    entry ? view.getUint32(entry.record[0] + 12, true) : firstStamp;
  const spans = spansOf(directory);
  const locals: Uint8Array[] = [bytes.subarray(0, spans[0]?.[0].offset ?? directory.start)];
  let length = locals[0]?.length ?? 0;
  const records = new Map<string, Uint8Array>();
  const place = (name: string, { local, record }: Packed) => {
    setOffset(record, length);
    records.set(name, record);
    locals.push(local);
    length += local.length;
  };
  for (const [entry, end] of spans) {
    if (changes.removed.has(entry.name)) continue;
    const content = changes.content.get(entry.name);
    const same = () => ({
      local: bytes.subarray(entry.offset, end),
      record: bytes.slice(...entry.record),
    });
    place(entry.name, content ? pack(entry.name, content, stampOf(entry)) : same());
  }
  const order = directory.entries.map((entry) => entry.name);
  const known = new Set(order);
  for (const [name, content] of changes.content) {
    if (known.has(name)) continue;
    place(name, pack(name, content, stampOf(directory.entries[0])));
    order.push(name);
  }
  const kept = order.flatMap((name) => records.get(name) ?? []);
  const size = kept.reduce((sum, record) => sum + record.length, 0);
  return joined([...locals, ...kept, closed(bytes, directory.closing, kept.length, length, size)]);
}

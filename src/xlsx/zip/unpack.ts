/** Unpacks one entry: never more than it says it holds, and checked against its checksum. */
import { Inflate, inflateSync } from "fflate";
import { limits } from "../limits";
import { refuse } from "../problem";
import { crc32 } from "./crc32";
import type { Entry } from "./directory";

const local = 0x04034b50;
const locked = 0x0001;
/** Packed bytes at a time, so that a part that lies about its size is noticed at once. */
const step = 1 << 16;

const damaged = (entry: Entry, detail: string) =>
  refuse({ code: "damaged", part: entry.name, detail });

/** Where the packed bytes of an entry begin. */
function dataStart(bytes: Uint8Array, entry: Entry): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const at = entry.offset;
  if (at + 30 > bytes.length || view.getUint32(at, true) !== local) {
    damaged(entry, "it is not where it should be");
  }
  const start = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  if (start + entry.packedSize > bytes.length) damaged(entry, "it is cut off");
  return start;
}

/** What a few packed bytes come to; one byte more than it says where they are more than that. */
const atOnce = (packed: Uint8Array, { size }: Entry): Uint8Array =>
  inflateSync(packed, { out: new Uint8Array(size + 1) });

/** The same of many packed bytes, a step at a time. */
function inSteps(packed: Uint8Array, { size }: Entry): Uint8Array {
  const room = new Uint8Array(size + 1);
  let filled = 0;
  const inflate = new Inflate((piece) => {
    room.set(piece.subarray(0, room.length - filled), filled);
    filled = Math.min(filled + piece.length, room.length);
  });
  for (let at = 0; at < packed.length && filled < room.length; at += step) {
    inflate.push(packed.subarray(at, at + step), at + step >= packed.length);
  }
  return room.subarray(0, filled);
}

function inflated(packed: Uint8Array, entry: Entry): Uint8Array {
  const made = (): Uint8Array => {
    try {
      return packed.length <= step ? atOnce(packed, entry) : inSteps(packed, entry);
    } catch {
      return damaged(entry, "it cannot be unpacked");
    }
  };
  const whole = made();
  if (whole.length > entry.size) refuse({ code: "packed-to-harm", part: entry.name });
  if (whole.length < entry.size) damaged(entry, "it is shorter than it says");
  return whole;
}

const packedOf = (bytes: Uint8Array, entry: Entry): Uint8Array => {
  const start = dataStart(bytes, entry);
  return bytes.subarray(start, start + entry.packedSize);
};

/** An entry of a file, and where it is. */
export interface Found {
  readonly bytes: Uint8Array;
  readonly entry: Entry;
}

/** Do two entries unpack to the same, since they are packed as the same? */
export function isPackedAlike(one: Found, other: Found): boolean {
  const said = ({ entry }: Found) =>
    [entry.method, entry.flags, entry.crc, entry.size, entry.packedSize].join();
  if (said(one) !== said(other)) return false;
  if (one.bytes === other.bytes && one.entry.offset === other.entry.offset) return true;
  const [here, there] = [packedOf(one.bytes, one.entry), packedOf(other.bytes, other.entry)];
  for (let at = 0; at < here.length; at += 1) if (here[at] !== there[at]) return false;
  return true;
}

export const isPackedToHarm = ({ size, packedSize }: Entry): boolean =>
  size > limits.packedTimesFrom && size > packedSize * limits.packedTimes;

function unpacked(bytes: Uint8Array, entry: Entry): Uint8Array {
  const packed = packedOf(bytes, entry);
  if (entry.method === 0) return packed.slice();
  if (entry.method === 8) return inflated(packed, entry);
  return damaged(entry, "it is packed in a way not known here");
}

export function unpack(bytes: Uint8Array, entry: Entry): Uint8Array {
  if (entry.flags & locked) refuse({ code: "encrypted" });
  const whole = unpacked(bytes, entry);
  if (whole.length !== entry.size || crc32(whole) !== entry.crc) {
    damaged(entry, "its checksum is wrong");
  }
  return whole;
}

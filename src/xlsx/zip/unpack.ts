/** Unpacks one entry: never more than it says it holds, and checked against its checksum. */
import { Inflate } from "fflate";
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

function inflated(packed: Uint8Array, entry: Entry): Uint8Array {
  const whole = new Uint8Array(entry.size);
  let filled = 0;
  const inflate = new Inflate((piece) => {
    if (filled + piece.length <= whole.length) whole.set(piece, filled);
    filled += piece.length;
  });
  try {
    for (let at = 0; at < packed.length && filled <= whole.length; at += step) {
      inflate.push(packed.subarray(at, at + step), at + step >= packed.length);
    }
  } catch {
    damaged(entry, "it cannot be unpacked");
  }
  if (filled > whole.length) refuse({ code: "packed-to-harm", part: entry.name });
  if (filled < whole.length) damaged(entry, "it is shorter than it says");
  return whole;
}

export const isPackedToHarm = ({ size, packedSize }: Entry): boolean =>
  size > limits.packedTimesFrom && size > packedSize * limits.packedTimes;

function unpacked(bytes: Uint8Array, entry: Entry): Uint8Array {
  const start = dataStart(bytes, entry);
  const packed = bytes.subarray(start, start + entry.packedSize);
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

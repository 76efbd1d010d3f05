/** Packs one entry: its local header and packed bytes, and its record for the directory. */
import { deflateSync } from "fflate";
import { crc32 } from "./crc32";

export interface Packed {
  readonly local: Uint8Array;
  /** Its offset is still to be set. */
  readonly record: Uint8Array;
}

const utf8Name = 0x0800;
const deflated = 8;
const version = 20;

/** Large parts are packed a little less, in half the time. */
const large = 1024 * 1024;
const levelFor = (content: Uint8Array) => (content.length > large ? 3 : 6);

/** The 26 bytes that a local header and a record have in common (APPNOTE 4.3.7 and 4.3.12). */
function commonFields(name: Uint8Array, content: Uint8Array, packed: Uint8Array, stamp: number) {
  const fields = new DataView(new ArrayBuffer(26));
  fields.setUint16(0, version, true);
  fields.setUint16(2, utf8Name, true);
  fields.setUint16(4, deflated, true);
  fields.setUint32(6, stamp, true);
  fields.setUint32(10, crc32(content), true);
  fields.setUint32(14, packed.length, true);
  fields.setUint32(18, content.length, true);
  fields.setUint16(22, name.length, true);
  return new Uint8Array(fields.buffer);
}

/** `stamp` is a date and time as the format writes them; there is no clock here. */
export function pack(name: string, content: Uint8Array, stamp: number): Packed {
  const nameBytes = new TextEncoder().encode(name);
  const packed = deflateSync(content, { level: levelFor(content) });
  const fields = commonFields(nameBytes, content, packed, stamp);
  const local = new Uint8Array(30 + nameBytes.length + packed.length);
  local.set([0x50, 0x4b, 3, 4]);
  local.set(fields, 4);
  local.set(nameBytes, 30);
  local.set(packed, 30 + nameBytes.length);
  const record = new Uint8Array(46 + nameBytes.length);
  record.set([0x50, 0x4b, 1, 2, version, 0]);
  record.set(fields, 6);
  record.set(nameBytes, 46);
  return { local, record };
}

/** Sizes and offset of an entry; where 32 bits say "see there", from its ZIP64 field (APPNOTE 4.5.3). */
import { refuse } from "../problem";

const seeThere = 0xffffffff;
const longField = 0x0001;

export interface Sizes {
  readonly packedSize: number;
  readonly size: number;
  readonly offset: number;
}

/** Where the ZIP64 field's data begin in the extra fields of a record; undefined when there is none. */
export function longFieldAt(view: DataView, from: number, to: number): number | undefined {
  for (let at = from; at + 4 <= to; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) === longField) return at + 4;
  }
  return undefined;
}

/** `record` is a record of the directory; its extra fields stand between `from` and `to`. */
export function longFields(view: DataView, record: number, from: number, to: number): Sizes {
  const size = view.getUint32(record + 24, true);
  const packedSize = view.getUint32(record + 20, true);
  const offset = view.getUint32(record + 42, true);
  let at = longFieldAt(view, from, to) ?? to;
  const long = (short: number): number => {
    if (short !== seeThere) return short;
    if (at + 8 > to) return refuse({ code: "damaged", part: "", detail: "a size is missing" });
    const value = Number(view.getBigUint64(at, true));
    at += 8;
    return value;
  };
  // In this order the field holds them.
  const longSize = long(size);
  const longPacked = long(packedSize);
  return { size: longSize, packedSize: longPacked, offset: long(offset) };
}

/**
 * The directory at the end of a ZIP file: which entries there are, and where. Read by hand (APPNOTE
 * 4.3), because what is not changed is to be copied packed as it is, which no zip library offers.
 */
import { limits } from "../limits";
import { refuse } from "../problem";
import { nameOf, refuseUnsafeNames } from "./entry-name";
import { longFields } from "./long-fields";

export interface Entry {
  /** With forward slashes: xl/workbook.xml. */
  readonly name: string;
  readonly flags: number;
  /** 0 stored, 8 deflated. */
  readonly method: number;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  /** Of its local header. */
  readonly offset: number;
  /** Of its record in the directory, and of the byte after that. */
  readonly record: readonly [number, number];
}

export interface Directory {
  readonly entries: readonly Entry[];
  /** Where the directory begins, and where its closing record does. */
  readonly start: number;
  readonly closing: number;
}

const signatures = { record: 0x02014b50, closing: 0x06054b50, locator: 0x07064b50 } as const;
const closingLength = 22;
const longestComment = 0xffff;

const damaged = (detail: string) => refuse({ code: "damaged", part: "", detail });

function findClosing(view: DataView): number {
  const last = view.byteLength - closingLength;
  for (let at = last; at >= Math.max(0, last - longestComment); at--) {
    if (view.getUint32(at, true) !== signatures.closing) continue;
    if (at + closingLength + view.getUint16(at + 20, true) <= view.byteLength) return at;
  }
  return refuse({ code: "not-a-workbook" });
}

function readEntry(view: DataView, bytes: Uint8Array, at: number): Entry {
  if (at + 46 > view.byteLength || view.getUint32(at, true) !== signatures.record) {
    damaged("its directory of parts is broken");
  }
  const nameLength = view.getUint16(at + 28, true);
  const extraLength = view.getUint16(at + 30, true);
  const end = at + 46 + nameLength + extraLength + view.getUint16(at + 32, true);
  if (end > view.byteLength) damaged("its directory of parts is cut off");
  const nameEnd = at + 46 + nameLength;
  return {
    name: nameOf(bytes.subarray(at + 46, nameEnd)),
    flags: view.getUint16(at + 8, true),
    method: view.getUint16(at + 10, true),
    crc: view.getUint32(at + 16, true),
    ...longFields(view, at, nameEnd, nameEnd + extraLength),
    record: [at, end],
  };
}

/** How many entries there are and where the directory begins; from the ZIP64 record if need be. */
function extent(view: DataView, closing: number): readonly [count: number, start: number] {
  const count = view.getUint16(closing + 10, true);
  const start = view.getUint32(closing + 16, true);
  if (count !== 0xffff && start !== 0xffffffff) return [count, start];
  const locator = closing - 20;
  if (locator < 0 || view.getUint32(locator, true) !== signatures.locator) return [count, start];
  const long = Number(view.getBigUint64(locator + 8, true));
  if (long + 56 > view.byteLength) damaged("its directory of parts is cut off");
  return [Number(view.getBigUint64(long + 32, true)), Number(view.getBigUint64(long + 48, true))];
}

export function readDirectory(bytes: Uint8Array): Directory {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.byteLength < closingLength) refuse({ code: "not-a-workbook" });
  const closing = findClosing(view);
  const [count, start] = extent(view, closing);
  if (count > limits.entries) damaged("it has too many parts");
  const entries: Entry[] = [];
  for (let at = start; entries.length < count;) {
    const entry = readEntry(view, bytes, at);
    entries.push(entry);
    at = entry.record[1];
  }
  refuseUnsafeNames(entries.map((entry) => entry.name));
  return { entries, start, closing };
}

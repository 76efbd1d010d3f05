import { strToU8, unzipSync, zipSync } from "fflate";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crc32 } from "../../src/xlsx/zip/crc32";
import { readDirectory } from "../../src/xlsx/zip/directory";
import { unpack } from "../../src/xlsx/zip/unpack";
import { writeZip } from "../../src/xlsx/zip/write";
import { opened, patched, set, valueIn } from "./answers";
import { bookOf } from "./files";

const none = { content: new Map<string, Uint8Array>(), removed: new Set<string>() };
const text = (content: string) => strToU8(content);

/** A stored file whose one entry says its sizes and place in a ZIP64 field, with ZIP64 closing records. */
function long(name: string, content: Uint8Array, sum: number): Uint8Array {
  const nameBytes = text(name);
  const view = (length: number) => new DataView(new ArrayBuffer(length));
  const local = view(30);
  local.setUint32(0, 0x04034b50, true);
  local.setUint32(14, sum, true);
  local.setUint32(18, content.length, true);
  local.setUint32(22, content.length, true);
  local.setUint16(26, nameBytes.length, true);
  const start = 30 + nameBytes.length + content.length;
  const record = view(46);
  record.setUint32(0, 0x02014b50, true);
  record.setUint32(16, sum, true);
  for (const at of [20, 24, 42]) record.setUint32(at, 0xffffffff, true);
  record.setUint16(28, nameBytes.length, true);
  record.setUint16(30, 28, true);
  const extra = view(28);
  extra.setUint16(0, 1, true);
  extra.setUint16(2, 24, true);
  extra.setBigUint64(4, BigInt(content.length), true);
  extra.setBigUint64(12, BigInt(content.length), true);
  const size = 46 + nameBytes.length + 28;
  const longClosing = view(56);
  longClosing.setUint32(0, 0x06064b50, true);
  longClosing.setBigUint64(32, 1n, true);
  longClosing.setBigUint64(40, BigInt(size), true);
  longClosing.setBigUint64(48, BigInt(start), true);
  const locator = view(20);
  locator.setUint32(0, 0x07064b50, true);
  locator.setBigUint64(8, BigInt(start + size), true);
  const closing = view(22);
  closing.setUint32(0, 0x06054b50, true);
  closing.setUint16(10, 0xffff, true);
  closing.setUint32(16, 0xffffffff, true);
  const pieces = [
    local,
    nameBytes,
    content,
    record,
    nameBytes,
    extra,
    longClosing,
    locator,
    closing,
  ];
  return new Uint8Array(
    pieces.flatMap((piece) => [
      ...(piece instanceof DataView ? new Uint8Array(piece.buffer) : piece),
    ]),
  );
}

describe("zip files", () => {
  it("have the checksum of the standard's check value", () => {
    // ISO 3309 / ITU-T V.42: "123456789" gives CBF43926.
    expect(crc32(text("123456789"))).toBe(0xcbf43926);
    expect(crc32(new Uint8Array())).toBe(0);
  });

  it("come out the same to another reader, but for what was changed", () => {
    const parts = fc.dictionary(
      fc.stringMatching(/^[a-z]{1,8}$/),
      fc.uint8Array({ maxLength: 300 }),
      { minKeys: 1, maxKeys: 6 },
    );
    fc.assert(
      fc.property(
        parts,
        parts,
        fc.constantFrom(0 as const, 6 as const),
        (before, changed, level) => {
          const bytes = zipSync(before, { level });
          const removed = Object.keys(before)
            .slice(1, 2)
            .filter((name) => !(name in changed));
          const after = writeZip(bytes, readDirectory(bytes), {
            content: new Map(Object.entries(changed)),
            removed: new Set(removed),
          });
          const wanted = Object.fromEntries(
            Object.entries({ ...before, ...changed }).filter(([name]) => !removed.includes(name)),
          );
          expect({ ...unzipSync(after) }).toEqual(wanted);
        },
      ),
      { numRuns: 100 },
    );
  });

  it("without changes keep every byte", () => {
    const bytes = bookOf("");
    expect(writeZip(bytes, readDirectory(bytes), none)).toEqual(bytes);
  });

  it("keep a comment at the end, and what stands before the first part", () => {
    const bytes = bookOf("");
    const comment = text("kept by the quay");
    const noted = new Uint8Array([...bytes, ...comment]);
    noted[bytes.length - 2] = comment.length;
    const after = patched(noted, [set("A1", 7)]);
    expect(after.slice(-comment.length)).toEqual(comment);
    expect(valueIn(opened(after), "A1")).toBe(7);
  });

  it("with long (ZIP64) records are read and written", () => {
    const content = text("<a/>");
    const bytes = long("a.xml", content, crc32(content));
    const directory = readDirectory(bytes);
    const [entry] = directory.entries;
    expect(entry).toMatchObject({ name: "a.xml", size: 4, packedSize: 4, offset: 0 });
    if (entry) expect(unpack(bytes, entry)).toEqual(content);
    const after = writeZip(bytes, directory, {
      ...none,
      content: new Map([["b.xml", text("<b/>")]]),
    });
    expect(readDirectory(after).entries.map(({ name }) => name)).toEqual(["a.xml", "b.xml"]);
    expect(Object.keys(unzipSync(after))).toEqual(["a.xml", "b.xml"]);
  });
});

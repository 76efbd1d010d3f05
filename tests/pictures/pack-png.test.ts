import { deflateSync, inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { packPng } from "./pack-png";
import { pixelsOf } from "./pixels";

const chunk = (kind: string, data: Uint8Array): Buffer => {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  return Buffer.concat([length, Buffer.from(kind, "latin1"), data, Buffer.alloc(4)]);
};

/** A PNG of red, green, blue and opacity, its rows as they are filtered. */
function png(width: number, rows: readonly (readonly number[])[]): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(rows.length, 4);
  head.set([8, 6, 0, 0, 0], 8);
  const data = deflateSync(Buffer.from(rows.flat()));
  return Buffer.concat([
    Buffer.alloc(8),
    chunk("IHDR", head),
    chunk("IDAT", data),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

describe("a picture of the help", () => {
  it("is read by each of the five filters, worked out by hand", () => {
    // Two pixels in a row: 10 20 30 and 12 24 36, opaque; then each row the same by another filter.
    const picture = png(2, [
      [0, 10, 20, 30, 255, 12, 24, 36, 255],
      [1, 10, 20, 30, 255, 2, 4, 6, 0],
      [2, 0, 0, 0, 0, 0, 0, 0, 0],
      // half of left and above, cut off: 10 - 5, 12 - (10 + 12) / 2
      [3, 5, 10, 15, 128, 1, 2, 3, 0],
      // left + above - corner is nearest to above in the first pixel, and to the left or above in the second
      [4, 0, 0, 0, 0, 0, 0, 0, 0],
    ]);
    const row = [10, 20, 30, 12, 24, 36];
    expect([...pixelsOf(picture).colours]).toEqual([...row, ...row, ...row, ...row, ...row]);
  });

  it("keeps its colours when it has no more than 256 of them", () => {
    const packed = packPng(png(2, [[0, 10, 20, 30, 255, 12, 24, 36, 255]]));
    const palette = packed.subarray(packed.indexOf("PLTE") + 4);
    const data = packed.subarray(packed.indexOf("IDAT") + 4);
    const [filter, first = 0, second = 0] = inflateSync(data, { finishFlush: 2 });
    expect(filter).toBe(0);
    expect([...palette.subarray(first * 3, first * 3 + 3)]).toEqual([10, 20, 30]);
    expect([...palette.subarray(second * 3, second * 3 + 3)]).toEqual([12, 24, 36]);
  });

  it("gives the rarest colours the nearest of the others when it has more", () => {
    // 300 greys, each a little lighter; the lightest ones twice as often
    const greys = Array.from({ length: 300 }, (_, at) => [at % 256, at % 200, at % 150, 255]);
    const packed = packPng(
      png(300, [
        [0, ...greys.flat()],
        [0, ...greys.flat()],
      ]),
    );
    const length = packed.readUInt32BE(packed.indexOf("PLTE") - 4);
    expect(length).toBeLessThanOrEqual(256 * 3);
  });
});

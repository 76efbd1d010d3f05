/** The pixels of a PNG as browsers write them: eight bits a channel, not interlaced. */
import { inflateSync } from "node:zlib";

export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** Red, green and blue of each pixel, row by row. */
  readonly colours: Uint8Array;
}

function chunksOf(png: Buffer): { kind: string; data: Buffer }[] {
  const chunks: { kind: string; data: Buffer }[] = [];
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    chunks.push({
      kind: png.toString("latin1", at + 4, at + 8),
      data: png.subarray(at + 8, at + 8 + length),
    });
    at += length + 12;
  }
  return chunks;
}

/** What each filter adds to a byte: from the byte before, above, and before that one above. */
const predicted = (filter: number, left: number, above: number, corner: number): number => {
  if (filter === 1) return left;
  if (filter === 2) return above;
  if (filter === 3) return (left + above) >> 1;
  if (filter !== 4) return 0;
  const [a, b, c] = [above - corner, left - corner, left + above - 2 * corner].map(Math.abs);
  if ((a ?? 0) <= (b ?? 0) && (a ?? 0) <= (c ?? 0)) return left;
  return (b ?? 0) <= (c ?? 0) ? above : corner;
};

export function pixelsOf(png: Buffer): Pixels {
  const chunks = chunksOf(png);
  const head = chunks.find(({ kind }) => kind === "IHDR")?.data ?? Buffer.alloc(13);
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  const channels = head[9] === 6 ? 4 : 3;
  const packed = chunks.filter(({ kind }) => kind === "IDAT").map(({ data }) => data);
  const raw = inflateSync(Buffer.concat(packed));
  const row = width * channels;
  const bytes = new Uint8Array(row * height);
  for (let y = 0; y < height; y += 1) {
    const filter = raw[y * (row + 1)] ?? 0;
    for (let x = 0; x < row; x += 1) {
      const at = y * row + x;
      const left = x < channels ? 0 : (bytes[at - channels] ?? 0);
      const above = y === 0 ? 0 : (bytes[at - row] ?? 0);
      const corner = x < channels || y === 0 ? 0 : (bytes[at - row - channels] ?? 0);
      bytes[at] = (raw[y * (row + 1) + 1 + x] ?? 0) + predicted(filter, left, above, corner);
    }
  }
  const colours = new Uint8Array(width * height * 3);
  for (let pixel = 0; pixel < width * height; pixel += 1) {
    for (let channel = 0; channel < 3; channel += 1) {
      colours[pixel * 3 + channel] = bytes[pixel * channels + channel] ?? 0;
    }
  }
  return { width, height, colours };
}

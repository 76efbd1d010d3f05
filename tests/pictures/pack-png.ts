/** A picture of a screen in fewer bytes: 256 colours are enough for letters and lines. */
import { crc32, deflateSync } from "node:zlib";
import { type Pixels, pixelsOf } from "./pixels";

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const mostColours = 256;

function chunk(kind: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(kind, "latin1"), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/** How far apart two colours are, as numbers of red, green and blue. */
const apart = (one: number, other: number): number =>
  [16, 8, 0].reduce((sum, bits) => sum + (((one >> bits) & 255) - ((other >> bits) & 255)) ** 2, 0);

/** The colours of a picture as numbers: the most frequent as they are, the others as the nearest of them. */
function fewer({ colours }: Pixels): number[] {
  const all: number[] = [];
  const counts = new Map<number, number>();
  for (let at = 0; at < colours.length; at += 3) {
    const [red = 0, green = 0, blue = 0] = colours.subarray(at, at + 3);
    const colour = (red << 16) | (green << 8) | blue;
    all.push(colour);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const frequent = [...counts].sort((a, b) => b[1] - a[1]).map(([colour]) => colour);
  const kept = frequent.slice(0, mostColours);
  const nearest = new Map(
    frequent.map((colour) => [
      colour,
      kept.reduce((best, each) => (apart(each, colour) < apart(best, colour) ? each : best)),
    ]),
  );
  return all.map((colour) => nearest.get(colour) ?? colour);
}

export function packPng(png: Buffer): Buffer {
  const pixels = pixelsOf(png);
  const { width, height } = pixels;
  const colours = fewer(pixels);
  const palette = [...new Set(colours)];
  const places = new Map(palette.map((colour, place) => [colour, place]));
  const rows = Buffer.alloc((width + 1) * height);
  colours.forEach((colour, at) => {
    const [y, x] = [Math.floor(at / width), at % width];
    rows[y * (width + 1) + 1 + x] = places.get(colour) ?? 0;
  });
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  // eight bits, colours by number
  head.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    signature,
    chunk("IHDR", head),
    chunk("PLTE", Uint8Array.from(palette.flatMap((c) => [c >> 16, (c >> 8) & 255, c & 255]))),
    chunk("IDAT", deflateSync(rows, { level: 9, memLevel: 9 })),
    chunk("IEND", new Uint8Array()),
  ]);
}

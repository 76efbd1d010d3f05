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

/** Each shade rounded to so many steps, white and black kept. */
const rounded = (shade: number, steps: number): number =>
  Math.round((Math.round((shade / 255) * steps) / steps) * 255);

/** The colours of a picture as numbers, with as many shades as leave at most 256 of them. */
function fewer({ colours }: Pixels): number[] {
  for (let steps = 255; ; steps = steps === 255 ? 32 : steps - 2) {
    const found: number[] = [];
    for (let at = 0; at < colours.length; at += 3) {
      const [red, green, blue] = [0, 1, 2].map((c) => rounded(colours[at + c] ?? 0, steps));
      found.push(((red ?? 0) << 16) | ((green ?? 0) << 8) | (blue ?? 0));
    }
    if (new Set(found).size <= mostColours) return found;
  }
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

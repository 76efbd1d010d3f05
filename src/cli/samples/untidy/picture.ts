/** A picture drawn in code: a ferry on the water, as a PNG. */
import { zlibSync } from "fflate";

const width = 120;
const height = 60;

type Colour = readonly [red: number, green: number, blue: number];
const sky: Colour = [214, 232, 244];
const water: Colour = [46, 110, 150];
const hull: Colour = [178, 58, 46];
const cabin: Colour = [250, 246, 236];
const funnel: Colour = [60, 60, 60];

const isWithin = (value: number, from: number, to: number): boolean => value >= from && value <= to;

function colourAt(x: number, y: number): Colour {
  // The hull narrows downwards.
  if (isWithin(y, 32, 44) && isWithin(x, 20 + (y - 32), 100 - (y - 32))) return hull;
  if (isWithin(y, 20, 31) && isWithin(x, 36, 80))
    return isWithin(y, 23, 27) && x % 8 > 2 ? water : cabin;
  if (isWithin(y, 10, 19) && isWithin(x, 60, 68)) return funnel;
  return y > 40 + Math.round(2 * Math.sin(x / 6)) ? water : sky;
}

function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}

const word = (value: number): number[] => [24, 16, 8, 0].map((shift) => (value >>> shift) & 0xff);

function chunk(name: string, data: Uint8Array): number[] {
  const named = new Uint8Array([...[...name].map((letter) => letter.charCodeAt(0)), ...data]);
  return [...word(data.length), ...named, ...word(checksum(named))];
}

/** Eight bits of red, green and blue for each point, row by row. */
export function ferryPicture(): Uint8Array {
  const rows: number[] = [];
  for (let y = 0; y < height; y += 1) {
    rows.push(0);
    for (let x = 0; x < width; x += 1) rows.push(...colourAt(x, y));
  }
  const header = new Uint8Array([...word(width), ...word(height), 8, 2, 0, 0, 0]);
  const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
  return new Uint8Array([
    ...signature,
    ...chunk("IHDR", header),
    ...chunk("IDAT", zlibSync(new Uint8Array(rows), { level: 9 })),
    ...chunk("IEND", new Uint8Array()),
  ]);
}

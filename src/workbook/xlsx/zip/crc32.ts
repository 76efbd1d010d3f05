/** The checksum of the ZIP format (CRC-32, polynomial EDB88320 as APPNOTE 4.4.7 gives it). */
const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit++) {
    remainder = remainder & 1 ? (remainder >>> 1) ^ 0xedb88320 : remainder >>> 1;
  }
  return remainder;
});

export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = (sum >>> 8) ^ (table[(sum ^ byte) & 0xff] as number);
  return ~sum >>> 0;
}

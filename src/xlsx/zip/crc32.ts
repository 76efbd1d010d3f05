/** The checksum of the ZIP format (CRC-32, polynomial EDB88320 as APPNOTE 4.4.7 gives it), four bytes at a time. */
const single = Int32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

/** What a byte adds when so many others follow it. */
const followed = (before: Int32Array): Int32Array =>
  before.map((sum) => (sum >>> 8) ^ (single[sum & 0xff] as number));

const once = followed(single);
const twice = followed(once);
const thrice = followed(twice);

export function crc32(bytes: Uint8Array): number {
  let sum = -1;
  let at = 0;
  for (const end = bytes.length - 3; at < end; at += 4) {
    sum ^=
      (bytes[at] as number) |
      ((bytes[at + 1] as number) << 8) |
      ((bytes[at + 2] as number) << 16) |
      ((bytes[at + 3] as number) << 24);
    sum =
      (thrice[sum & 0xff] as number) ^
      (twice[(sum >>> 8) & 0xff] as number) ^
      (once[(sum >>> 16) & 0xff] as number) ^
      (single[sum >>> 24] as number);
  }
  for (; at < bytes.length; at++) {
    sum = (sum >>> 8) ^ (single[(sum ^ (bytes[at] as number)) & 0xff] as number);
  }
  return ~sum >>> 0;
}

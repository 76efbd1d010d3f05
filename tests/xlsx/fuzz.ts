/** Workbook files spoilt in every way a disk, a mail program or malice might; the same for the same seed. */
import { type Parts, zipped as packed } from "./files";

const zipped = (parts: Parts): Uint8Array => packed(parts, 0);

export type Random = () => number;

/** A small generator of the xorshift kind (Marsaglia 2003), so that a seed tells the whole story. */
function random(seed: number): Random {
  let state = (seed * 2_654_435_761) >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
}

const below = (next: Random, limit: number): number => Math.floor(next() * limit);
const pick = <T>(next: Random, from: readonly T[]): T => from[below(next, from.length)] as T;

type Spoil = (bytes: Uint8Array, parts: Parts, next: Random) => Uint8Array;

/** Changes the text of one part. */
const inPart =
  (change: (text: string, next: Random, parts: Parts) => string): Spoil =>
  (_, parts, next) => {
    const name = pick(next, Object.keys(parts));
    return zipped({ ...parts, [name]: change(parts[name] ?? "", next, parts) });
  };

const cutIn = (text: string, at: number, put: string, drop = 0) =>
  text.slice(0, at) + put + text.slice(at + drop);

const oddNumbers = [
  "-1",
  "0",
  "99999999999999999999",
  "1e999",
  "NaN",
  "0x10",
  "1.5",
  "",
  "2147483648",
  "16385",
  "1048577",
];
const oddText = [
  "<",
  ">",
  "&",
  "&x;",
  "&#0;",
  "&#x110000;",
  "]]>",
  "<!--",
  "<!DOCTYPE a>",
  "<?x?>",
  "<![CDATA[",
  "\u0000",
  "\ud800",
  "\ufeff",
  "xmlns:q='q'",
  "<q:a/>",
];
const oddReferences = [
  "A0",
  "XFE1",
  "A1:B2:C3",
  "$A$1",
  "1A",
  "AAAA1",
  "A1048577",
  "B2:A1",
  "A1:XFD1048576",
  "'",
];

const spoils: Record<string, Spoil> = {
  "cut off": (bytes, _, next) => bytes.slice(0, below(next, bytes.length)),
  "cut at the front": (bytes, _, next) => bytes.slice(below(next, 200)),
  "bytes changed": (bytes, _, next) => {
    const copy = bytes.slice();
    for (let times = 1 + below(next, 8); times > 0; times--) {
      copy[below(next, copy.length)] = below(next, 256);
    }
    return copy;
  },
  "directory changed": (bytes, _, next) => {
    const copy = bytes.slice();
    const from = Math.max(0, copy.length - 1500);
    for (let times = 1 + below(next, 4); times > 0; times--) {
      copy[from + below(next, copy.length - from)] = pick(next, [
        0,
        1,
        0x7f,
        0xff,
        below(next, 256),
      ]);
    }
    return copy;
  },
  "a stretch repeated": (bytes, _, next) => {
    const from = below(next, bytes.length);
    const to = from + below(next, bytes.length - from);
    return new Uint8Array([...bytes.slice(0, to), ...bytes.slice(from)]);
  },
  "parts swapped": (_, parts, next) => {
    const [one, other] = [pick(next, Object.keys(parts)), pick(next, Object.keys(parts))];
    return zipped({ ...parts, [one]: parts[other] ?? "", [other]: parts[one] ?? "" });
  },
  "a part missing": (_, parts, next) => {
    const gone = pick(next, Object.keys(parts));
    return zipped(Object.fromEntries(Object.entries(parts).filter(([name]) => name !== gone)));
  },
  "text cut off": inPart((text, next) => text.slice(0, below(next, text.length + 1))),
  "text dropped": inPart((text, next) =>
    cutIn(text, below(next, text.length + 1), "", below(next, 40)),
  ),
  "odd text put in": inPart((text, next) =>
    cutIn(text, below(next, text.length + 1), pick(next, oddText)),
  ),
  "numbers spoilt": inPart((text, next) => {
    const keep = next();
    return text.replace(/\d+/g, (digits) =>
      next() < 0.1 + keep / 2 ? pick(next, oddNumbers) : digits,
    );
  }),
  "one number spoilt": inPart((text, next) => {
    const found = [...text.matchAll(/\d+/g)];
    const one = found[below(next, found.length)];
    return one ? cutIn(text, one.index, pick(next, oddNumbers), one[0].length) : text;
  }),
  "references spoilt": inPart((text, next) =>
    text.replace(/\b[A-Z]{1,3}\d+\b/g, (name) => (next() < 0.1 ? pick(next, oddReferences) : name)),
  ),
  "names spoilt": inPart((text, next) => {
    const from = pick(next, [
      "row",
      "c",
      "f",
      "v",
      "sheetData",
      "sheet",
      "Relationship",
      "Target",
      "xf",
      "si",
      "ref",
      "r",
      "t",
    ]);
    const to = pick(next, ["row", "c", "f", "is", "x", "sheetData", "Id", "xmlns", "r"]);
    return text.replace(new RegExp(`\\b${from}\\b`, "g"), (word) => (next() < 0.3 ? to : word));
  }),
  "an element repeated": inPart((text, next) => {
    const found = [...text.matchAll(/<(\w+)[^<>]*\/>/g)];
    const one = found[below(next, found.length)];
    return one ? cutIn(text, one.index, one[0].repeat(1 + below(next, 2000))) : text;
  }),
  "nested without end": inPart((text, next) => {
    const depth = 10 ** (1 + below(next, 4));
    const name = pick(next, ["a", "r", "c", "row", "is"]);
    const close = next() < 0.7 ? `</${name}>`.repeat(depth) : "";
    const at = text.indexOf(">", below(next, text.length)) + 1;
    return cutIn(text, at, `<${name}>`.repeat(depth) + close);
  }),
  "one text without end": inPart((text, next) => {
    const at = text.indexOf(">", below(next, text.length)) + 1;
    return cutIn(
      text,
      at,
      pick(next, ["(", '"', "A1+", "[", "'", "_x000D_", "-", "{", " "]).repeat(40_000),
    );
  }),
  "an attribute put in": inPart((text, next) => {
    const at = text.indexOf(" ", below(next, text.length));
    const name = pick(next, [
      "t",
      "r",
      "s",
      "si",
      "ref",
      "cm",
      "min",
      "max",
      "mc:Ignorable",
      "xmlns",
      "TargetMode",
    ]);
    const value = pick(next, [
      ...oddNumbers,
      ...oddReferences,
      "shared",
      "array",
      "dataTable",
      "External",
      "s",
      "d",
    ]);
    return at < 0 ? text : cutIn(text, at, ` ${name}="${value}"`);
  }),
  "two parts of one name": (bytes, parts, next) => {
    const names = Object.keys(parts).sort((a, b) => a.length - b.length);
    const copy = bytes.slice();
    const to = pick(next, names);
    const from = names.find((name) => name !== to && name.length === to.length) ?? to;
    const [was, is] = [new TextEncoder().encode(from), new TextEncoder().encode(to)];
    for (let at = 0; at + was.length <= copy.length; at++) {
      if (was.every((byte, index) => copy[at + index] === byte)) copy.set(is, at);
    }
    return copy;
  },
};

export const ways = Object.keys(spoils);

export function spoilt(bytes: Uint8Array, parts: Parts, seed: number): Uint8Array {
  const next = random(seed);
  const way = spoils[ways[seed % ways.length] ?? ""] as Spoil;
  return way(bytes, parts, next);
}

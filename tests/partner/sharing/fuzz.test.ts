/**
 * Spoilt files: a copy of each ends in a sentence or in a workbook that opens, and the file itself is
 * never changed. What fails is printed with its seed, which makes the same file again.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { shareWorkbook } from "../../../src/partner/sharing";
import { isFileProblem, openXlsx, sayFile } from "../../../src/xlsx";
import { times } from "../../thorough";
import { root } from "../../rules/sources-of";
import { made, partsOf } from "../../xlsx/files";
import { spoilt, ways } from "../../xlsx/fuzz";

const sample = (name: string) =>
  new Uint8Array(readFileSync(join(root, "sample-workbooks", `${name}.xlsx`)));

const sources = [sample("logbook"), sample("what-if"), made("dynamic"), made("threaded")].map(
  (bytes) => ({ bytes, parts: partsOf(bytes) }),
);

const files = times(30);

function trouble(bytes: Uint8Array, kind: "partner" | "numbers"): string | undefined {
  const before = bytes.slice();
  const shared = shareWorkbook(bytes, { kind, fileName: "log.xlsx" });
  if (isFileProblem(shared)) {
    if (shared.fields.code === "failed") return `threw: ${shared.fields.detail}`;
    const sentence = sayFile(shared);
    if (sentence.length > 200 || sentence.length < 6) return `said: ${sentence}`;
  } else if (!isFileProblem(openXlsx(bytes))) {
    const again = openXlsx(shared.bytes);
    if (isFileProblem(again)) return `made what it cannot open: ${sayFile(again)}`;
  }
  return before.every((byte, at) => byte === bytes[at]) ? undefined : "changed what it was given";
}

describe("copies of spoilt files", () => {
  it(
    "end in a sentence or a sound workbook, and leave the file as it is",
    () => {
      const found: string[] = [];
      for (let seed = 0; seed < files; seed++) {
        const source = sources[seed % sources.length] as (typeof sources)[number];
        const bytes = spoilt(source.bytes, source.parts, seed);
        const why = trouble(bytes, seed % 3 === 0 ? "numbers" : "partner");
        const way = ways[seed % ways.length] ?? "";
        if (why !== undefined) found.push(`seed ${String(seed)} (${way}): ${why}`);
      }
      expect(found).toEqual([]);
    },
    times(120_000),
  );
});

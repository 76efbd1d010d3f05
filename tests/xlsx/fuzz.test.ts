/**
 * Hundreds of spoilt files: each ends in a sentence or in a sound workbook, and is itself never
 * changed. What fails is printed with its seed, which makes the same file again.
 */
import { describe, expect, it } from "vitest";
import { isFileProblem, openXlsx, patchXlsx, sayFile } from "../../src/xlsx";
import { set, setFormula } from "./answers";
import { made, type Parts, partsOf } from "./files";
import { times } from "../thorough";
import { spoilt, ways } from "./fuzz";

const sources = ["charts", "dynamic", "tidy", "threaded", "pivot", "prefixed"].map((name) => {
  const bytes = made(name);
  return { bytes, parts: partsOf(bytes) as Parts };
});

const files = times(400);

/** What is wrong with how a file was dealt with; undefined when nothing is. */
function trouble(bytes: Uint8Array): string | undefined {
  const before = bytes.slice();
  const book = openXlsx(bytes);
  if (isFileProblem(book)) {
    if (book.fields.code === "failed") return `threw: ${book.fields.detail}`;
    const sentence = sayFile(book);
    if (sentence.length > 200 || sentence.length < 6) return `said: ${sentence}`;
  } else {
    const sheet = book.sheets.find(({ kind }) => kind === "cells")?.name ?? "";
    const edits = [set("B20", 7, sheet), set("C5", "x", sheet), setFormula("B900", "=1", 1, sheet)];
    const saved = patchXlsx(book, edits);
    if (isFileProblem(saved)) {
      if (saved.fields.code === "failed") return `threw on saving: ${saved.fields.detail}`;
    } else {
      const again = openXlsx(saved);
      if (isFileProblem(again)) return `saved what it cannot open: ${sayFile(again)}`;
      const value = again.sheets
        .find(({ name }) => name === sheet)
        ?.cells.find(({ row, column }) => row === 19 && column === 1)?.value;
      if (value !== 7) return `saved ${JSON.stringify(value)} for 7`;
    }
  }
  return before.length === bytes.length && before.every((byte, at) => byte === bytes[at])
    ? undefined
    : "changed what it was given";
}

describe("spoilt files", () => {
  it("are of every kind", () => {
    expect(files / ways.length).toBeGreaterThan(20);
  });

  it(
    "end in a sentence or a sound workbook, and stay as they are",
    () => {
      const found: string[] = [];
      for (let seed = 0; seed < files; seed++) {
        const source = sources[seed % sources.length] as (typeof sources)[number];
        const why = trouble(spoilt(source.bytes, source.parts, seed));
        if (why !== undefined) found.push(`seed ${seed} (${ways[seed % ways.length]}): ${why}`);
      }
      expect(found).toEqual([]);
    },
    times(120_000),
  );
});

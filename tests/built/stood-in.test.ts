/** What the build puts in the place of what the embedded spreadsheet brings along and never uses. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import * as cjk from "cjk-regex";
import { describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";

const grid = readFileSync(join(root, "dist/workbench.grid.js"), "utf8");
const library = join(root, "node_modules/@univerjs/engine-render/lib/es/index.js");

describe("the grid's file", () => {
  it.each(["letters", "all", "punctuations"] as const)(
    "knows the same CJK %s as the library that is left out of it",
    (set) => {
      expect(grid).toContain(String(cjk[set]().toRegExp()));
    },
  );

  it.each([
    ["opentype.js", "parse"],
    ["franc-min", "franc"],
    ["cjk-regex", "* as cjk"],
  ])("has of %s all that the renderer asks for: %s", (from, asked) => {
    const line = readFileSync(library, "utf8")
      .split("\n")
      .find((each) => each.startsWith("import") && each.endsWith(`from "${from}";`));
    expect(line?.replace(/^import |[{}]| from.*$/g, "").trim()).toBe(asked);
  });

  it.each([
    ["trigrams of languages", "the| th| an|he "],
    ["reader of font files", "yStrikeoutSize"],
    ["dictionary of hyphenation, here Danish", "003,001,005,004"],
  ])("holds no %s", (_what, words) => {
    expect(grid.includes(words)).toBe(false);
  });
});

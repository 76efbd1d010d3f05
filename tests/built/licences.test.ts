import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";

const folder = process.env.DIST ?? join(root, "dist");

/** Packages that are certainly in each part of the build, and the names their licences bear. */
const parts = [
  ["functions", "decimal.js", "Michael Mclaughlin"],
  ["add-in", "react-dom", "Facebook"],
  ["workbench", "@univerjs/core", "Apache License"],
] as const;

describe("the licences of what is bundled", () => {
  it.each(parts)("go with the part %s: %s is named there, with its text", (part, name, words) => {
    const file = join(folder, `licences-${part}.txt`);
    expect(existsSync(file)).toBe(true);
    const text = readFileSync(file, "utf8");
    expect(text.split("\n")).toContain(name);
    expect(text.slice(text.indexOf(name))).toContain(words);
  });
});

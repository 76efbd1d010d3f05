import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import { breakages } from "./breakages";

describe("what is broken on purpose", () => {
  it.each(breakages)("finds its line in the product, once: $what", ({ file, line, broken }) => {
    expect(readFileSync(join(root, file), "utf8").split(line)).toHaveLength(2);
    expect(broken).not.toBe(line);
  });
});

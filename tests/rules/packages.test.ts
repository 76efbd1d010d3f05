import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./sources-of";

const read = (name: string) => JSON.parse(readFileSync(join(root, name), "utf8"));
const manifest = read("package.json") as Record<string, Record<string, string>>;
const lock = read("package-lock.json") as { packages: Record<string, { version?: string }> };

const copiesOf = (name: string): string[] =>
  Object.keys(lock.packages).filter((path) => path.endsWith(`node_modules/${name}`));

describe("the packages", () => {
  it("are pinned to exact versions", () => {
    const all = { ...manifest.dependencies, ...manifest.devDependencies };
    const loose = Object.entries(all).filter(
      ([, version]) => !/^\d+\.\d+\.\d+[\w.-]*$/.test(version),
    );
    expect(loose).toEqual([]);
  });

  it.each(["react", "react-dom", "decimal.js"])("hold one copy of %s", (name) => {
    expect(copiesOf(name)).toHaveLength(1);
  });

  it("hold the embedded spreadsheet at one version, and none of its commercial parts", () => {
    const parts = Object.entries(lock.packages).filter(([path]) => path.includes("@univerjs"));
    const versions = new Set(
      parts
        .filter(([path]) => !/@univerjs\/(protocol|icons)/.test(path))
        .map(([, entry]) => entry.version),
    );
    expect([...versions]).toEqual(["0.25.1"]);
    expect(parts.filter(([path]) => path.includes("@univerjs-pro"))).toEqual([]);
  });
});

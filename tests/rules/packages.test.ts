import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { filesUnder, root } from "./sources-of";

const read = (name: string) => JSON.parse(readFileSync(join(root, name), "utf8"));
const manifest = read("package.json") as Record<string, Record<string, string>>;
const lock = read("package-lock.json") as { packages: Record<string, { version?: string }> };

/** Everything that can name a package: sources, tests and the configuration files. */
const projectText = [
  ...[...filesUnder("src"), ...filesUnder("tests")].map(({ text }) => text),
  ...readdirSync(root)
    .filter((name) => /\.(js|mjs|ts|json)$/.test(name) && !name.startsWith("package"))
    .map((name) => readFileSync(join(root, name), "utf8")),
].join("\n");

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

  it("are each listed for contributors, with the licence the package states and a reason", () => {
    const developers = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
    const section = developers.split("## Packages")[1]?.split("\n## ")[0] ?? "";
    const listed = section
      .split("\n")
      .filter((line) => line.startsWith("| ") && !line.includes("---"))
      .map((line) => line.split("|").map((part) => part.trim()))
      .filter(([, name]) => name !== "package");
    const names = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(listed.map(([, name]) => name).sort()).toEqual([...names].sort());
    for (const [, name = "", licence = "", reason = ""] of listed) {
      expect(reason.length, name).toBeGreaterThan(3);
      const stated = String(read(`node_modules/${name}/package.json`).license);
      // one package points at a licence file instead of naming a licence
      expect(stated === "LICENSE" ? licence.includes("LICENSE") : licence === stated, name).toBe(
        true,
      );
    }
  });

  it("are each used: imported, configured, typed for, or asked for by another", () => {
    const names = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies });
    const peers = Object.entries(lock.packages as Record<string, { peerDependencies?: object }>)
      .filter(([path]) => path !== "")
      .flatMap(([, { peerDependencies }]) => Object.keys(peerDependencies ?? {}));
    const scripts = Object.values(manifest.scripts ?? {}).join(" ");
    const unused = names.filter(
      (name) =>
        !name.startsWith("@types/") &&
        !peers.includes(name) &&
        !scripts.includes(name) &&
        !projectText.includes(`"${name}`) &&
        !projectText.includes(`/${name}/`),
    );
    expect(unused).toEqual([]);
  });
});

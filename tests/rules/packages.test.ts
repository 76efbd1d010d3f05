import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { filesUnder, root } from "./sources-of";

const read = (name: string) => JSON.parse(readFileSync(join(root, name), "utf8"));
const manifest = read("package.json") as Record<string, Record<string, string>>;
interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly hasInstallScript?: boolean;
}
const lock = read("package-lock.json") as { packages: Record<string, Locked> };
/** Every package of the lock file, but the project itself. */
const locked = Object.entries(lock.packages).filter(([path]) => path !== "");

/** Licences that let us use, bundle and hand on; who gets a choice takes the first. */
const licences = new Set([
  "Apache-2.0 AND MIT",
  "MIT",
  "ISC",
  "0BSD",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "(BSD-3-Clause OR GPL-2.0)",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "MPL-2.0",
  "Python-2.0",
  "CC-BY-4.0",
]);

/** What the lock file says nothing of: the words its LICENSE file begins with. */
const byFile: ReadonlyMap<string, RegExp> = new Map([
  ["node_modules/@univerjs/telemetry", /^\s*Apache License\s+Version 2\.0/],
  // of the spreadsheet program's maker; its files are only run by tests
  ["node_modules/@microsoft/office-js", /^/],
]);

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
      ([, version]) => !/^(npm:[\w@/-]+@)?\d+\.\d+\.\d+[\w.-]*$/.test(version),
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
    const listed = readFileSync(join(root, "tests/measured/packages.md"), "utf8")
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

  it("are under known licences, those that others bring along too", () => {
    const unknown = locked.filter(([path, { license }]) => {
      const begins = byFile.get(path);
      if (begins === undefined) return license === undefined || !licences.has(license);
      const file = readdirSync(join(root, path)).find((name) => /^licen[cs]e/i.test(name)) ?? "";
      return !begins.test(readFileSync(join(root, path, file), "utf8"));
    });
    expect(unknown).toEqual([]);
  });

  it("run no script of theirs when they are installed", () => {
    const settings = readFileSync(join(root, ".npmrc"), "utf8").split("\n");
    expect(settings).toContain("ignore-scripts=true");
    expect(settings).toContain("save-exact=true");
    const wishing = locked.filter(([, { hasInstallScript }]) => hasInstallScript === true);
    // all work without: they only look at themselves, or bring their program as a package
    expect(wishing.map(([path]) => path)).toEqual([
      "node_modules/@swc/core",
      "node_modules/esbuild",
      "node_modules/protobufjs",
    ]);
  });

  it("come from the registry alone, each with the sum of what it was", () => {
    const loose = locked.filter(
      ([, { integrity, resolved }]) =>
        integrity?.startsWith("sha512-") !== true ||
        (resolved !== undefined && !resolved.startsWith("https://registry.npmjs.org/")),
    );
    expect(loose.map(([path]) => path)).toEqual([]);
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

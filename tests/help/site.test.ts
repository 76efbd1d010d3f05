import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { leftIn } from "../../src/cli/build/leftovers";
import { catalogue } from "../../src/functions/catalogue";
import { functionsJson } from "../../src/functions/metadata";
import { helpSite } from "../../src/help/site";
import { root } from "../rules/sources-of";

const site = helpSite(catalogue);
const pictures = join(root, "src/help/pictures");
const base = "https://co-op.example/titrebook/";

describe("the help site", () => {
  it("has a page at every function's help address", () => {
    for (const { helpUrl } of functionsJson(catalogue, base).functions) {
      expect(helpUrl.startsWith(`${base}help/`)).toBe(true);
      expect(Object.keys(site)).toContain(helpUrl.slice(`${base}help/`.length));
    }
  });

  it("has no link that leads nowhere, and none that leads outside", () => {
    // the build adds the script; pictures stand beside the sources
    const there = [
      ...Object.keys(site),
      "search.js",
      "../icons/icon-32.png",
      "../other/google-sheets/titrebook.js",
      "../install/titrebook.zip",
      ...readdirSync(pictures),
    ];
    for (const [name, content] of Object.entries(site)) {
      for (const [, target = ""] of content.matchAll(/(?:href|src)="([^"]+)"/g)) {
        const [file = "", id] = target.split("#");
        expect([name, file, there.includes(file)]).toEqual([name, file, true]);
        if (id !== undefined)
          expect([target, site[file]]).toEqual([target, expect.stringContaining(`id="${id}"`)]);
      }
    }
  });

  it("names no machine but the one that serves it", () => {
    const named = Object.entries(site).flatMap(([name, content]) => leftIn(name, content));
    expect(named).toEqual([]);
  });

  it.each(catalogue)(
    "says of $id each argument, its limits, its equation and its sources",
    (entry) => {
      const content = site[`${entry.id.toLowerCase()}.html`] ?? "";
      for (const argument of entry.arguments) {
        expect(content).toContain(argument.name);
        expect(content).toContain(argument.says.replaceAll('"', "&quot;"));
      }
      expect(content).toContain("<h2>Equation</h2>");
      expect(entry.sources.length).toBeGreaterThan(0);
    },
  );

  it.each(catalogue)("shows the example of $id in plain formulas that call no TITRE", ({ id }) => {
    const content = site[`${id.toLowerCase()}.html`] ?? "";
    const [, plain = ""] = /<h2>In plain formulas<\/h2>([^]*?)<h2>/.exec(content) ?? [];
    expect(plain).toMatch(/<code>=|a partner copy keeps/);
    expect(plain).not.toContain("TITRE.");
  });

  it("writes every equation with the names of the function's own arguments", () => {
    const written = catalogue.flatMap(({ id, equation, arguments: taken }) =>
      [...equation.matchAll(/\{(\w+)\}/g)].map(([, name = ""]) => ({
        id,
        name,
        isTaken: taken.some((argument) => argument.name === name),
      })),
    );
    expect(written.length).toBeGreaterThan(0);
    expect(written.filter(({ isTaken }) => !isTaken)).toEqual([]);
  });

  it("shows text as text, and runs one script of its own on one page", () => {
    for (const [name, content] of Object.entries(site)) {
      const scripts = content.match(/<script[^>]*>/gi) ?? [];
      expect([name, scripts]).toEqual([
        name,
        name === "search.html" ? ['<script src="search.js" defer>'] : [],
      ]);
      expect(content).not.toMatch(/<[^>]*\son\w+=/i);
    }
  });

  it("says on every page what it may load, and lets nothing in from elsewhere", () => {
    for (const [name, content] of Object.entries(site)) {
      if (!name.endsWith(".html")) continue;
      expect(content).toContain("default-src 'none'");
      expect(content).not.toMatch(/(?:src|href)="(?:https?:)?\/\//);
    }
  });

  it("gives no heading twice the same address on a page", () => {
    for (const [name, content] of Object.entries(site)) {
      const ids = [...content.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect([name, new Set(ids).size]).toEqual([name, ids.length]);
    }
  });

  it("has pictures of one size, small in bytes, each shown on a page", () => {
    for (const file of readdirSync(pictures)) {
      expect([file, statSync(join(pictures, file)).size < 60_000]).toEqual([file, true]);
      expect(Object.values(site).some((content) => content.includes(`src="${file}"`))).toBe(true);
    }
  });
});

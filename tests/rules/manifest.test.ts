import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { OfficeAddinManifest } from "office-addin-manifest";
import { describe, expect, it } from "vitest";
import { releaseManifest } from "../../src/cli/build/release-manifest";
import { parseManifest } from "../../src/cli/manifest/parse";
import { manifestFaults, manifestRules } from "../../src/cli/manifest/rules";
import { namespace } from "../../src/functions/names";
import { root } from "./sources-of";

const path = join(root, "manifest.xml");
const manifest = readFileSync(path, "utf8");
const base = "https://co-op.example/titrebook/";
const all = (pattern: RegExp, text = manifest): string[] =>
  [...text.matchAll(pattern)].map(([, it = ""]) => it);

/** Each rule broken once, by a change that a hand could make. */
const slips: readonly (readonly [string, RegExp | string, string, RegExp])[] = [
  ["order", /(<Id>.*<\/Id>)\s*(<Version>.*<\/Version>)/, "$2 $1", /Id .* must stand before/],
  [
    "order of a host",
    /(<Runtimes>[^]*<\/Runtimes>)(\s*<AllFormFactors>[^]*<\/AllFormFactors>)/,
    "$2$1",
    /Runtimes .* must stand before/,
  ],
  ["GUID", "3b7f2c1a-9d54", "3b7f2c1a", /is no GUID/],
  ["version", "0.1.0.0", "0.1", /four parts/],
  [
    "length",
    'GetStarted.Title" DefaultValue="',
    `GetStarted.Title" DefaultValue="${"x".repeat(126)}`,
    /125 are allowed/,
  ],
  [
    "resource",
    'bt:Url id="Help.Url"',
    'bt:Url id="Help.Page"',
    /names Help.Url, which is not defined/,
  ],
  ["long name", /Open\.Tip/g, "Open.TipThatIsMuchTooLongToBeTakenByIt", /longer than 32/],
  ["twice", 'Image id="Icon.32"', 'Image id="Icon.16"', /Icon.16 is defined twice/],
  [
    "https",
    "https://localhost:3001/functions.js",
    "http://localhost:3001/functions.js",
    /not under/,
  ],
  [
    "base",
    "https://localhost:3001/icons/icon-80.png",
    "https://elsewhere.example/icon-80.png",
    /not under/,
  ],
  [
    "one page",
    '<FunctionFile resid="Taskpane.Url"/>',
    '<FunctionFile resid="Help.Url"/>',
    /the pages are/,
  ],
  ["lifetime", 'lifetime="long"', 'lifetime="short"', /lifetime/],
  ["icon", "icons/icon-64.png", "icons/icon-32.png", /no picture of 64/],
  ["ribbon icon", '<bt:Image size="80" resid="Icon.80"/>', "", /lacks 80/],
  ["sets", /<Set Name="SharedRuntime"[^>]*>/, "", /SharedRuntime is not asked for/],
  [
    "version of a set",
    'Name="ExcelApi" MinVersion="1.13"',
    'Name="ExcelApi" MinVersion="1.9"',
    /ExcelApi is not asked for in version 1\.13/,
  ],
];

describe("the manifest", () => {
  it("is read by the maker's own parser", async () => {
    const info = await OfficeAddinManifest.readManifestFile(path);
    expect(info.displayName).toBe("Titrebook");
    expect(info.officeAppType).toBe("TaskPaneApp");
    expect(info.hosts).toEqual(["Workbook"]);
  });

  it.each(manifestRules)("keeps the rule: $rule", ({ faults, source }) => {
    expect(faults(parseManifest(manifest))).toEqual([]);
    expect(source).not.toBe("");
  });

  it.each(slips)("is caught when broken: %s", (_, found, instead, says) => {
    const broken = manifest.replace(found, instead);
    expect(broken).not.toBe(manifest);
    expect(manifestFaults(parseManifest(broken)).join("; ")).toMatch(says);
  });

  it("is refused with its line where it is no XML", () => {
    expect(() => parseManifest(manifest.replace("</Hosts>", ""))).toThrow(/\d+:\d+/);
  });

  it("has its icons, in the sizes asked for", () => {
    for (const address of all(/"https:\/\/localhost:3001\/(icons\/[^"]+)"/g)) {
      const file = join(root, "src/taskpane", address);
      expect(existsSync(file)).toBe(true);
      const size = Number(/-(\d+)\.png$/.exec(address)?.[1]);
      const picture = readFileSync(file);
      expect([picture.readUInt32BE(16), picture.readUInt32BE(20)]).toEqual([size, size]);
    }
  });

  it("names the functions' namespace as the catalogue does", () => {
    expect(manifest).toContain(`id="Functions.Namespace" DefaultValue="${namespace}"`);
  });

  it("has the version of the package, with a nought behind it", () => {
    const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
      version: string;
    };
    expect(manifest).toContain(`<Version>${version}.0</Version>`);
  });

  it("is rewritten for another address in every place, with the version behind pages and scripts", () => {
    const released = releaseManifest(manifest, base, "0.1.0");
    expect(released).not.toContain("localhost");
    expect(manifestFaults(parseManifest(released))).toEqual([]);
    expect(new Set(all(/"(https:[^"]+\?v=0\.1\.0)"/g, released))).toEqual(
      new Set(
        ["taskpane.html", "functions.js", "functions.json"].map((name) => `${base}${name}?v=0.1.0`),
      ),
    );
  });
});

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { OfficeAddinManifest } from "office-addin-manifest";
import { describe, expect, it } from "vitest";
import { namespace } from "../../src/functions/catalogue";
import { root } from "./sources-of";

const path = join(root, "manifest.xml");
const manifest = readFileSync(path, "utf8");
const all = (pattern: RegExp): string[] => [...manifest.matchAll(pattern)].map(([, it = ""]) => it);

describe("the manifest", () => {
  it("is read by the maker's own parser", async () => {
    const info = await OfficeAddinManifest.readManifestFile(path);
    expect(info.displayName).toBe("Titrebook");
    expect(info.officeAppType).toBe("TaskPaneApp");
    expect(info.hosts).toEqual(["Workbook"]);
  });

  it("resolves every resource it names, in at most 32 characters", () => {
    const defined = all(/<bt:(?:Image|Url|String) id="([^"]+)"/g);
    for (const name of all(/resid="([^"]+)"/g)) {
      expect(defined).toContain(name);
      expect(name.length).toBeLessThanOrEqual(32);
    }
  });

  it("has every address on one https base", () => {
    for (const address of all(/DefaultValue="(https?:[^"]+)"/g)) {
      expect(address).toMatch(/^https:\/\/localhost:3001\//);
    }
  });

  it("uses one page for the runtime, the functions and the pane, as a shared runtime asks", () => {
    const pages = all(/<(?:Runtime|FunctionFile) resid="([^"]+)"/g);
    const page = /<Page>\s*<SourceLocation resid="([^"]+)"/.exec(manifest)?.[1];
    const pane = /ShowTaskpane">\s*<SourceLocation resid="([^"]+)"/.exec(manifest)?.[1];
    expect(new Set([...pages, page, pane])).toEqual(new Set(["Taskpane.Url"]));
    expect(manifest).toContain('lifetime="long"');
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

  it("keeps its texts within the lengths allowed", () => {
    for (const text of all(/<bt:String id="[^"]+" DefaultValue="([^"]*)"/g)) {
      expect(text.length).toBeLessThanOrEqual(125);
    }
    expect(all(/<Description DefaultValue="([^"]*)"/g)[0]?.length).toBeLessThanOrEqual(250);
  });
});

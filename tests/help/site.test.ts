import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { functionsJson } from "../../src/functions/metadata";
import { helpSite } from "../../src/help/site";

const site = helpSite(catalogue);
const base = "https://co-op.example/titrebook/";

describe("the help site", () => {
  it("has a page at every function's help address", () => {
    for (const { helpUrl } of functionsJson(catalogue, base).functions) {
      expect(helpUrl.startsWith(`${base}help/`)).toBe(true);
      expect(Object.keys(site)).toContain(helpUrl.slice(`${base}help/`.length));
    }
  });

  it("has no link that leads nowhere, and none that leads outside", () => {
    for (const [name, content] of Object.entries(site)) {
      for (const [, target = ""] of content.matchAll(/(?:href|src)="([^"]+)"/g)) {
        expect([name, Object.keys(site)]).toEqual([name, expect.arrayContaining([target])]);
      }
    }
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

  it("writes every equation with the names of the function's own arguments", () => {
    for (const entry of catalogue) {
      const names = entry.arguments.map((argument) => argument.name);
      for (const [, name = ""] of entry.equation.matchAll(/\{(\w+)\}/g)) {
        expect([entry.id, names]).toEqual([entry.id, expect.arrayContaining([name])]);
      }
    }
  });

  it("shows text as text", () => {
    for (const content of Object.values(site)) expect(content).not.toMatch(/<script|\bon\w+=/i);
  });
});

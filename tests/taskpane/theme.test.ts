import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const file = (path: string): string =>
  readFileSync(fileURLToPath(new URL(`../../${path}`, import.meta.url)), "utf8");

/** The parts of Fluent that the pane draws with. */
const parts = ["button", "checkbox", "field", "input", "label", "radio", "select"];

function askedBy(part: string): string[] {
  const folder = `node_modules/@fluentui/react-${part}/lib/components`;
  const where = fileURLToPath(new URL(`../../${folder}`, import.meta.url));
  return readdirSync(where, { recursive: true, encoding: "utf8" })
    .filter((path) => /use\w+Styles\.styles\.js$/.test(path) && isOurs(path))
    .flatMap((path) => [...file(`${folder}/${path}`).matchAll(/var\(--([a-z]\w+)/g)])
    .map(([, token = ""]) => token);
}

/** The package of buttons holds others that the pane has none of. */
const isOurs = (path: string): boolean => !/(Compound|Menu|Split|Toggle)Button/.test(path);

describe("the pane's theme", () => {
  it("answers everything that Fluent's fields and buttons ask for", () => {
    const given = [...file("src/taskpane/theme-tokens.css").matchAll(/--([a-z]\w+):/g)].map(
      ([, token]) => token,
    );
    const asked = new Set(parts.flatMap(askedBy).filter((token) => !token.startsWith("fui")));
    expect(asked.size).toBeGreaterThan(60);
    expect([...asked].filter((token) => !given.includes(token))).toEqual([]);
  });

  it("has every colour in light and in dark", () => {
    const [light = "", dark = ""] = file("src/taskpane/theme.css").split(
      "@media screen and (prefers-color",
    );
    const names = (css: string) =>
      [...css.matchAll(/--(pane-[a-z-]+):/g)].map(([, name]) => name).sort();
    expect(names(dark.split("@media")[0] ?? "")).toEqual(names(light));
  });
});

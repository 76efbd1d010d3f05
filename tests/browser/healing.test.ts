import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { screenFaults } from "../taskpane/page/checks";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";
import { type Contexts, contextsOfChromium } from "./shared-browser";

const html = `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Waiting cells</title>
<link rel="stylesheet" href="page.css"></head><body><div id="pane"></div>
<script type="module" src="page.js"></script></body></html>`;

describe.runIf(hasBrowser)("the notice of cells that wait", () => {
  let browser: Contexts;
  const bodies: Record<string, [string, string]> = { "/": ["text/html", html] };

  beforeAll(async () => {
    const entry = fileURLToPath(new URL("../taskpane/healing/page.tsx", import.meta.url));
    const { outputFiles } = await build({
      entryPoints: [entry],
      bundle: true,
      write: false,
      format: "esm",
      jsx: "automatic",
      outdir: "page",
      define: { "process.env.NODE_ENV": '"production"' },
    });
    for (const { path, text } of outputFiles) {
      const ending = path.endsWith(".css") ? "css" : "javascript";
      bodies[ending === "css" ? "/page.css" : "/page.js"] = [`text/${ending}`, text];
    }
    browser = await contextsOfChromium();
  });
  afterAll(() => browser?.close());

  async function open(query = ""): Promise<Page> {
    const page = await (
      await browser.newContext({ viewport: { width: 320, height: 700 } })
    ).newPage();
    await page.route("**/*", (route) => {
      const [contentType, body] = bodies[new URL(route.request().url()).pathname] ?? ["", ""];
      return route.fulfill({ contentType, body });
    });
    await page.goto(`http://localhost/${query}`);
    return page;
  }

  const says = (page: Page, words: RegExp) => page.getByText(words).waitFor({ timeout: 20_000 });
  const writes = (page: Page) =>
    page.evaluate(() => (window as unknown as { writes?: number }).writes ?? 0);

  it("tells of them, asks again at a press, and says when all answer", async () => {
    const page = await open();
    await says(page, /2 cells with TITRE functions show #NAME\?, first Titrations!U4/);
    expect(await writes(page)).toBe(0);
    await page.getByRole("button", { name: "Ask again" }).press("Enter");
    await says(page, /Asking again/);
    await says(page, /All 2 cells answer now/);
    expect(await writes(page)).toBe(2);
    await page.getByRole("button", { name: "Close" }).press("Enter");
    expect(await page.getByLabel("Cells that wait").count()).toBe(0);
  });

  rarely("gives up after three tries, and lets one ask again", async () => {
    const page = await open("?after=9");
    await page.getByRole("button", { name: "Ask again" }).click();
    await says(page, /0 of 2 answer now\. After 3 tries Titrations!U4 still shows #NAME\?/);
    expect(await writes(page)).toBe(3);
    await page.getByRole("button", { name: "Ask again" }).waitFor();
  });

  it("goes by itself once the cells answer without it", async () => {
    const page = await open("?after=9");
    await page.getByRole("button", { name: "Ask again" }).waitFor();
    await page.evaluate(() => {
      (window as unknown as { answer(): void }).answer();
    });
    await page.getByLabel("Cells that wait").waitFor({ state: "detached", timeout: 20_000 });
    expect(await writes(page)).toBe(0);
  });

  it("stays away where every cell answers", async () => {
    const page = await open("?after=0");
    await page.waitForTimeout(600);
    expect(await page.getByLabel("Cells that wait").count()).toBe(0);
  });

  it("runs the checks again at a press", async () => {
    const page = await open("?after=0");
    await page.getByRole("button", { name: "Run the checks again" }).press("Enter");
    await says(page, /The checks were run again/);
    expect(await writes(page)).toBe(1);
  });

  rarely("has no fault that axe can find, and fits into 320 pixels", async () => {
    const page = await open();
    await page.getByRole("button", { name: "Ask again" }).waitFor();
    expect(await screenFaults(page, 320)).toEqual([]);
  });
});

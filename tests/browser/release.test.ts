/**
 * A build for another machine, served from a folder of a plain web server: as a co-operative hosts it.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, existsSync, readdirSync, readFileSync, rmSync } from "node:fs";
import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readChecksums } from "../../src/cli/build/checksums";
import { host, serveFolder } from "../../src/cli/static-server";
import { root } from "../rules/sources-of";
import { violations } from "../taskpane/page/checks";
import { cases, rarely } from "../wide";
import { hasBrowser } from "./browser";
import { type Contexts, contextsOfChromium } from "./shared-browser";
import { watchPolicy } from "./policy-refusals";
import { gridIsReady, openSheet } from "./workbench-page";

const base = "https://co-op.example/members/titrebook/";
const site = join(root, ".cache/release");
const folder = join(site, "members/titrebook");
const read = (name: string): string => readFileSync(join(folder, name), "utf8");

describe.runIf(hasBrowser)("a build for another machine", () => {
  let server: Server;
  let browser: Contexts;
  let at = "";

  beforeAll(async () => {
    // the other parts of a build are the same for every machine
    rmSync(site, { recursive: true, force: true });
    cpSync(join(root, "dist"), folder, { recursive: true });
    execFileSync(
      process.execPath,
      [
        join(root, "node_modules/webpack/bin/webpack.js"),
        ...["--mode", "production", "--config-name", "add-in"],
        ...["--env", `base=${base}`, "--env", `out=${folder}`],
      ],
      { cwd: root, stdio: "pipe" },
    );
    server = await serveFolder(site, 0);
    at = `http://${host}:${(server.address() as AddressInfo).port}/members/titrebook/`;
    browser = await contextsOfChromium();
  }, 600_000);
  afterAll(async () => {
    await browser?.close();
    server?.closeAllConnections();
    server?.close();
  });

  /** A page that is told on: errors, requests that leave its folder, and what its policy refuses. */
  async function open(options = {}): Promise<{ page: Page; complaints: () => Promise<string[]> }> {
    const page = await (await browser.newContext(options)).newPage();
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(String(error)));
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    page.on("request", (request) => {
      const url = request.url();
      if (!url.startsWith(at) && !/^(data|blob):/.test(url)) complaints.push(`request to ${url}`);
    });
    const refused = await watchPolicy(page);
    return { page, complaints: async () => [...complaints, ...(await refused())] };
  }

  it("runs its workbench from a folder, asks no one else for anything, and breaks no rule of its own", async () => {
    const { page, complaints } = await open({ viewport: { width: 1400, height: 850 } });
    await page.goto(at);
    await gridIsReady(page);
    await openSheet(page, "Batches");
    await openSheet(page, "Titrations");
    const tasks = page.getByRole("navigation", { name: "Tasks" }).getByRole("button");
    const names = await tasks.allTextContents();
    expect(names.slice(0, 2)).toEqual(["This cell", "Titrate"]);
    for (const name of names) {
      await tasks.getByText(name, { exact: true }).click();
      await page.locator("#pane").getByText("One moment.").waitFor({ state: "detached" });
    }
    expect(await complaints()).toEqual([]);
  });

  rarely("opens every page of its help without a complaint", async () => {
    const { page, complaints } = await open({ viewport: { width: 360, height: 700 } });
    const metadata = JSON.parse(read("functions.json")) as { functions: { helpUrl: string }[] };
    const named = metadata.functions.map(({ helpUrl }) => helpUrl.replace(base, ""));
    const pages = readdirSync(join(folder, "help"))
      .filter((name) => name.endsWith(".html"))
      .map((name) => `help/${name}`);
    expect(pages).toEqual(expect.arrayContaining(named));
    expect(pages.length).toBeGreaterThan(45);
    for (const name of pages) {
      const answer = await page.goto(at + name);
      expect([name, answer?.status()]).toEqual([name, 200]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect([name, wide]).toEqual([name, 360]);
    }
    expect(await complaints()).toEqual([]);
  });

  it("finds words in its help without asking anybody, and shows pictures", async () => {
    const { page, complaints } = await open({ viewport: { width: 360, height: 700 } });
    await page.goto(`${at}help/index.html`);
    await page.getByRole("link", { name: "Search" }).first().click();
    await page.getByLabel("Words to look for").fill("acid number");
    const first = page.locator("#entries li a").first();
    await expect.poll(() => first.textContent()).toMatch(/acid ?value/i);
    await page.getByLabel("Words to look for").fill("zebra");
    await page.getByText("No help found for “zebra”.").waitFor();
    await page.goto(`${at}help/first-titration.html`);
    const widths = await page.locator("figure img").evaluateAll((all) =>
      Promise.all(
        all.map(async (image) => {
          (image as HTMLImageElement).loading = "eager";
          await (image as HTMLImageElement).decode();
          return (image as HTMLImageElement).naturalWidth;
        }),
      ),
    );
    expect(Math.min(...widths)).toBeGreaterThan(300);
    expect(await complaints()).toEqual([]);
  });

  it.each(cases(["index"], ["mistakes", "search", "glossary", "hosting", "budget"]))(
    "has no fault that axe can find in help/%s.html, light or dark",
    async (name) => {
      for (const colorScheme of ["light", "dark"] as const) {
        const { page } = await open({
          viewport: { width: 360, height: 700 },
          colorScheme,
        });
        await page.goto(`${at}help/${name}.html`);
        const faults = await violations(page);
        expect([colorScheme, faults]).toEqual([colorScheme, []]);
      }
    },
  );

  it("names in its manifest only files that are there", () => {
    const addresses = [...read("manifest.xml").matchAll(/"(https:[^"]+)"/g)].map(
      ([, address = ""]) => address,
    );
    expect(addresses.length).toBeGreaterThan(8);
    for (const address of addresses) {
      expect(address.startsWith(base)).toBe(true);
      const name = address.slice(base.length).replace(/\?.*/, "");
      expect([name, existsSync(join(folder, name))]).toEqual([name, true]);
    }
  });

  it("lists the sum of every file, and each is right", () => {
    const sums = readChecksums(read("checksums.txt"));
    expect(sums.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["functions.js", "functions.json", "index.html", "manifest.xml"]),
    );
    for (const { name, sum } of sums) {
      const content = readFileSync(join(folder, name));
      expect([name, createHash("sha256").update(content).digest("hex")]).toEqual([name, sum]);
    }
  });

  it("loads the functions before the pane, each with a version behind its name", () => {
    const scripts = [...read("taskpane.html").matchAll(/<script[^>]*src="([^"]+)"/g)].map(
      ([, address]) => address,
    );
    expect(scripts).toEqual([
      expect.stringMatching(/^https:\/\/appsforoffice\.microsoft\.com\/.*office\.js$/),
      expect.stringMatching(/^functions\.js\?v=\d+\.\d+\.\d+$/),
      expect.stringMatching(/^taskpane\.js\?[0-9a-f]+$/),
    ]);
  });
});

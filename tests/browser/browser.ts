/**
 * The built workbench in a real browser: served from dist, opened in Chromium. Without a browser the
 * suites are left out, and say so; with REQUIRE_ALL=1 that is a failure.
 */
import { existsSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { BrowserContextOptions, Page } from "playwright-core";
import { executablePath } from "../../src/cli/chromium";
import { host, serveFolder } from "../../src/cli/static-server";
import { contextsOfChromium } from "./shared-browser";

/** Another build can be named, to test it beside the usual one. */
const dist = process.env.DIST ?? fileURLToPath(new URL("../../dist/", import.meta.url));

export const hasBrowser = existsSync(executablePath);
if (!hasBrowser && process.env.REQUIRE_ALL === "1") {
  throw new Error(`No browser at ${executablePath}: install Chromium, or name it in CHROMIUM.`);
}
if (!hasBrowser) {
  console.warn(`Left out: browser tests. There is no Chromium at ${executablePath}.`);
}
if (!existsSync(join(dist, "index.html"))) {
  throw new Error("There is no build to test: run `npm run build` first.");
}

export interface OpenPage {
  readonly page: Page;
  /** Errors of the page and its console, and requests to any other host: none are expected. */
  readonly complaints: string[];
}

export interface Served {
  readonly address: string;
  open(options?: BrowserContextOptions): Promise<OpenPage>;
  close(): Promise<void>;
}

function listen(page: Page, address: string): string[] {
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("request", (request) => {
    const isOwn = request.url().startsWith(address) || /^(data|blob):/.test(request.url());
    if (!isOwn) complaints.push(`request to ${request.url()}`);
  });
  return complaints;
}

export async function serve(): Promise<Served> {
  const server = await serveFolder(dist, 0);
  const address = `http://${host}:${(server.address() as AddressInfo).port}/`;
  const chromium = await contextsOfChromium();
  return {
    address,
    async open(options = {}) {
      const context = await chromium.newContext({
        viewport: { width: 1400, height: 850 },
        ...options,
      });
      // tsx, which the commands are run by, writes calls of it into what is sent to the page
      await context.addInitScript("globalThis.__name ??= (named) => named");
      const page = await context.newPage();
      return { page, complaints: listen(page, address) };
    },
    async close() {
      await chromium.close();
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
  };
}

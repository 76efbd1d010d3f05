/** The pane alone in a real browser, served from memory: no port, no build, no other host. */
import type { BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { contextsOfChromium } from "../../browser/shared-browser";
import { bundle, type Parts } from "./bundle";

const address = "http://localhost/";

const html = `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Titrate</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="page.css"><style>body{margin:0;background:var(--pane-paper)}</style></head>
<body><div id="pane"></div><script type="module" src="page.js"></script></body></html>`;

let bundled: Promise<Parts> | undefined;

/** As the run of tests made it; a command makes its own. */
async function bundledOnce(): Promise<Parts> {
  if (process.env.VITEST === undefined) return bundle();
  const { inject } = await import("vitest");
  return inject("panePage");
}

export interface OpenedPage {
  readonly page: Page;
  /** Errors of the page and its console, and requests to anywhere else: none are expected. */
  readonly complaints: string[];
}

export interface PaneBrowser {
  open(options?: BrowserContextOptions, query?: string): Promise<OpenedPage>;
  /** Another page of the same person: what the browser kept is there. */
  openIn(context: BrowserContext, query?: string): Promise<OpenedPage>;
  close(): Promise<void>;
}

async function serve(page: Page, parts: Parts, complaints: string[]): Promise<void> {
  const bodies: Record<string, readonly [string, string]> = {
    "/": ["text/html", html],
    "/page.js": ["text/javascript", parts.js],
    "/page.css": ["text/css", parts.css],
    "/favicon.ico": ["image/x-icon", ""],
  };
  await page.route("**/*", async (route) => {
    const url = new URL(route.request().url());
    const found = url.href.startsWith(address) ? bodies[url.pathname] : undefined;
    if (!found) {
      complaints.push(`request to ${url.href}`);
      await route.abort();
      return;
    }
    await route.fulfill({ contentType: found[0], body: found[1] });
  });
}

export async function openChromium(): Promise<PaneBrowser> {
  const parts = await (bundled ??= bundledOnce());
  const browser = await contextsOfChromium();
  const openIn = async (context: BrowserContext, query = ""): Promise<OpenedPage> => {
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(String(error)));
    page.on("console", (message) => {
      if (message.type() === "error") complaints.push(message.text());
    });
    await serve(page, parts, complaints);
    await page.goto(`${address}?${query}`);
    return { page, complaints };
  };
  return {
    openIn,
    async open(options = {}, query = "") {
      const viewport = { width: 340, height: 760 };
      return openIn(await browser.newContext({ viewport, locale: "en-GB", ...options }), query);
    },
    close: () => browser.close(),
  };
}

/** The built workbench in Chromium, when both are there. */
import { existsSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { executablePath, launchChromium } from "../chromium";
import { host, serveFolder } from "../static-server";

/** Undefined when there is no Chromium or no build here. */
export async function withBuiltPage<T>(
  folder: string,
  work: (browser: Browser, address: string) => Promise<T>,
): Promise<T | undefined> {
  if (!existsSync(executablePath) || !existsSync(join(folder, "index.html"))) return undefined;
  const server = await serveFolder(folder, 0);
  const { port } = server.address() as AddressInfo;
  const browser = await launchChromium();
  try {
    return await work(browser, `http://${host}:${String(port)}/`);
  } finally {
    await browser.close();
    server.close();
  }
}

export const gridIsThere = (page: Page) =>
  page.waitForSelector('#sheet[data-showing="grid"]', { timeout: 120_000 });

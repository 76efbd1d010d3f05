/** How long the built workbench takes on this machine: a sheet to read, then a grid to type into. */
import { existsSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { executablePath, launchChromium } from "../chromium";
import { host, serveFolder } from "../static-server";
import { type Figure, held, told } from "./figure";

const times = 5;

interface Load {
  readonly readable: number;
  readonly editable: number;
}

/** Milliseconds from asking for the page; the smallest of some loads, each in a fresh context. */
async function quietLoad(address: string): Promise<Load> {
  const browser = await launchChromium();
  let quiet: Load = { readable: Infinity, editable: Infinity };
  for (let time = 0; time < times; time += 1) {
    const page = await (await browser.newContext()).newPage();
    const asked = Date.now();
    await page.goto(address, { waitUntil: "commit" });
    await page.locator(".plain table").first().waitFor();
    const readable = Date.now() - asked;
    await page.waitForSelector('#sheet[data-showing="grid"]', { timeout: 60_000 });
    const editable = Date.now() - asked;
    quiet = {
      readable: Math.min(quiet.readable, readable),
      editable: Math.min(quiet.editable, editable),
    };
    await page.context().close();
  }
  await browser.close();
  return quiet;
}

export async function pageLoad(root: string): Promise<Figure[]> {
  const folder = join(root, "dist");
  if (!existsSync(executablePath) || !existsSync(join(folder, "index.html"))) {
    return [{ what: "workbench page", measured: "no Chromium or no build here", budget: "" }];
  }
  const server = await serveFolder(folder, 0);
  const { port } = server.address() as AddressInfo;
  try {
    const { readable, editable } = await quietLoad(`http://${host}:${String(port)}/`);
    return [
      held("workbench: a sheet to read", readable / 1000, 1.5, "s"),
      held("workbench: a grid to type into", editable / 1000, 3, "s"),
      told("the grid after the sheet", editable / readable, "x", 1),
    ];
  } finally {
    server.close();
  }
}

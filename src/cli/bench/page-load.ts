/** How long the built workbench takes on this machine: a sheet to read, then a grid to type into. */
import type { Browser } from "playwright-core";
import { gridIsThere, withBuiltPage } from "./built-page";
import { held, type Measure, told } from "./figure";

const times = 5;

interface Load {
  readonly readable: number;
  readonly editable: number;
}

/** Milliseconds from asking for the page; the smallest of some loads, each in a fresh context. */
async function quietLoad(browser: Browser, address: string): Promise<Load> {
  let quiet: Load = { readable: Infinity, editable: Infinity };
  for (let time = 0; time < times; time += 1) {
    const page = await (await browser.newContext()).newPage();
    const asked = Date.now();
    await page.goto(address, { waitUntil: "commit" });
    await page.locator(".plain table").first().waitFor();
    const readable = Date.now() - asked;
    await gridIsThere(page);
    const editable = Date.now() - asked;
    quiet = {
      readable: Math.min(quiet.readable, readable),
      editable: Math.min(quiet.editable, editable),
    };
    await page.context().close();
  }
  return quiet;
}

async function run(build: string) {
  const quiet = await withBuiltPage(build, quietLoad);
  if (!quiet) return [];
  const { readable, editable } = quiet;
  return [
    held("workbench: a sheet to read", readable / 1000, 1.5, "s"),
    held("workbench: a grid to type into", editable / 1000, 3, "s"),
    told("the grid after the sheet", editable / readable, "x", 1),
  ];
}

export const pageLoad: Measure = { name: "page", isOfBuild: true, run };

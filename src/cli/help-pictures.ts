/**
 * `npm run help-pictures`: the pictures of the help pages, taken anew from the pane and from the built
 * workbench. Look at them before they are committed.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { gridIsReady } from "../../tests/browser/workbench-page";
import { openChromium } from "../../tests/taskpane/page/open-page";
import { scenes } from "../../tests/taskpane/page/scenes";
import { launchChromium } from "./chromium";
import { packPng } from "./help-pictures/pack-png";
import { host, serveFolder } from "./static-server";

const folder = fileURLToPath(new URL("../help/pictures/", import.meta.url));
const dist = fileURLToPath(new URL("../../dist/", import.meta.url));
const pane = { viewport: { width: 340, height: 700 }, reducedMotion: "reduce" } as const;
const workbench = { viewport: { width: 900, height: 480 }, reducedMotion: "reduce" } as const;

/** Scenes of the titration task, and the picture each becomes. */
const ofTitrating: Readonly<Record<string, string>> = {
  result: "titrate.png",
  "replicates, suspect": "suspect.png",
  record: "record.png",
};

mkdirSync(folder, { recursive: true });

async function keep(page: Page, file: string): Promise<void> {
  const png = packPng(await page.screenshot());
  writeFileSync(`${folder}${file}`, png);
  console.log(`src/help/pictures/${file}: ${(png.length / 1000).toFixed(1)} kB`);
}

const chromium = await openChromium();
try {
  const { page } = await chromium.open(pane);
  await scenes(page, async (name) => {
    const file = ofTitrating[name];
    if (file !== undefined) await keep(page, file);
  });
} finally {
  await chromium.close();
}

const server = await serveFolder(dist, 0);
const browser = await launchChromium();
try {
  const page = await (await browser.newContext(workbench)).newPage();
  await page.goto(`http://${host}:${(server.address() as AddressInfo).port}/`);
  await gridIsReady(page);
  await keep(page, "workbench.png");
} finally {
  await browser.close();
  server.closeAllConnections();
  server.close();
}

/**
 * `npm run help-pictures`: the pictures of the help pages, taken anew from the pane and from the built
 * workbench. Look at them before they are committed.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { endBrowser } from "../browser/shared-browser";
import { gridIsReady } from "../browser/workbench-page";
import { openChromium } from "../taskpane/page/open-page";
import { packPng } from "./pack-png";
import { letNamesBe } from "./shoot";
import { openBuilt } from "./built-pages";
import { subjects } from "./walks";

const folder = fileURLToPath(new URL("../../src/help/pictures/", import.meta.url));
const pane = { viewport: { width: 340, height: 700 }, reducedMotion: "reduce" } as const;
const workbench = { viewport: { width: 1200, height: 560 }, reducedMotion: "reduce" } as const;

interface Picture {
  readonly file: string;
  /** One of the walks through the pane's tasks, and the screen of it. */
  readonly walk: string;
  readonly scene: string;
}

const pictures: readonly Picture[] = [
  { file: "titrate.png", walk: "titrate", scene: "result" },
  { file: "suspect.png", walk: "titrate", scene: "replicates, suspect" },
  { file: "batch.png", walk: "batch", scene: "weigh-out of a blend" },
  { file: "columns.png", walk: "logbook", scene: "understand, as guessed" },
  { file: "recheck.png", walk: "logbook", scene: "re-check, found" },
];

mkdirSync(folder, { recursive: true });

async function keep(page: Page, file: string): Promise<void> {
  await page.evaluate(() => {
    scrollTo(0, 0);
  });
  // what moves has come to rest
  await page.waitForTimeout(400);
  const png = packPng(await page.screenshot());
  writeFileSync(`${folder}${file}`, png);
  console.log(`src/help/pictures/${file}: ${(png.length / 1000).toFixed(1)} kB`);
}

const chromium = await openChromium();
try {
  for (const walk of new Set(pictures.map((each) => each.walk))) {
    for (const { at, through } of subjects[walk]?.walks ?? []) {
      const { page } = await chromium.open(pane, at);
      await letNamesBe(page);
      await through(page, async (scene) => {
        const wanted = pictures.find((each) => each.walk === walk && each.scene === scene);
        if (wanted) await keep(page, wanted.file);
      });
      await page.context().close();
    }
  }
} finally {
  await chromium.close();
}

const built = await openBuilt();
try {
  const { page } = await built.open(workbench);
  await gridIsReady(page);
  await keep(page, "workbench.png");
} finally {
  await built.close();
}
await endBrowser();

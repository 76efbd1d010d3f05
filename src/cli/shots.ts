/**
 * `npm run shots`: every screen of the titration task at 320 and 340 pixels, light and dark, on one
 * contact sheet in shots/. To be looked at.
 */
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openChromium } from "../../tests/taskpane/page/open-page";
import { scenes } from "../../tests/taskpane/page/scenes";
import { contactSheet, type Shot } from "../../tests/taskpane/page/sheet";

const folder = fileURLToPath(new URL("../../shots/", import.meta.url));
const looks = [320, 340].flatMap((width) =>
  (["light", "dark"] as const).map((colorScheme) => ({ width, colorScheme })),
);

/** One look in detail; all looks at a glance, one under another. */
const large = { width: 340, tallest: 1100, perRow: 7 };
const small = { width: 120, tallest: 380, perRow: 19 };

mkdirSync(folder, { recursive: true });
const chromium = await openChromium();
try {
  const all: Shot[] = [];
  for (const { width, colorScheme } of looks) {
    const { page, complaints } = await chromium.open({
      viewport: { width, height: 700 },
      colorScheme,
      reducedMotion: "reduce",
    });
    const shots: Shot[] = [];
    await scenes(page, async (name) => {
      shots.push({ name, png: await page.screenshot({ fullPage: true }) });
    });
    const sheet = `titrate-${width}-${colorScheme}.png`;
    await contactSheet(page.context(), shots, large, `${folder}${sheet}`);
    all.push(...shots.map(({ name, png }) => ({ name: `${width} ${colorScheme}: ${name}`, png })));
    if (complaints.length > 0) console.error(complaints.join("\n"));
    console.log(`shots/${sheet}`);
    await page.context().close();
  }
  const { page } = await chromium.open();
  await contactSheet(page.context(), all, small, `${folder}titrate.png`);
  console.log("shots/titrate.png");
} finally {
  await chromium.close();
}

/** Draws the icon in every size the spreadsheet program asks for, from the one drawing. */
import { readFileSync, writeFileSync } from "node:fs";
import { launchChromium } from "./chromium";

const folder = new URL("../taskpane/icons/", import.meta.url);
const drawing = readFileSync(new URL("titrebook.svg", folder), "utf8");
const sizes = [16, 32, 64, 80];

const browser = await launchChromium();
for (const size of sizes) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>body{margin:0}svg{display:block;width:${size}px}</style>${drawing}`,
  );
  const picture = await page.screenshot({ omitBackground: true });
  writeFileSync(new URL(`icon-${size}.png`, folder), picture);
}
await browser.close();
console.log(`Drew the icon in ${sizes.join(", ")} pixels.`);

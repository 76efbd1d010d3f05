/**
 * `npm run shots`: every screen of every task of the pane at 320 and 340 pixels, light and dark, on
 * contact sheets in shots/. To be looked at. `npm run shots -- what-if` for one task.
 */
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openChromium } from "../../tests/taskpane/page/open-page";
import { shoot } from "./shots/shoot";
import { walks } from "./shots/walks";

const folder = fileURLToPath(new URL("../../shots/", import.meta.url));
const asked = process.argv.slice(2);
const unknown = asked.find((task) => !Object.hasOwn(walks, task));
if (unknown !== undefined) {
  console.error(`No task ${unknown}; there are: ${Object.keys(walks).join(", ")}.`);
  process.exit(1);
}

mkdirSync(folder, { recursive: true });
const chromium = await openChromium();
try {
  for (const [task, all] of Object.entries(walks)) {
    if (asked.length === 0 || asked.includes(task)) await shoot(chromium, task, all, folder);
  }
} finally {
  await chromium.close();
}

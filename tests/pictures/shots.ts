/**
 * `npm run shots`: every screen of the pane at 320 and 340 pixels, of the built workbench and the help at
 * 320, 900 and 1400, light and dark, on contact sheets in shots/. To be looked at.
 * `npm run shots -- what-if` for one.
 */
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { endBrowser } from "../browser/shared-browser";
import { openChromium } from "../taskpane/page/open-page";
import { shoot } from "./shoot";
import { subjects } from "./walks";

const folder = fileURLToPath(new URL("../../shots/", import.meta.url));
const asked = process.argv.slice(2);
const unknown = asked.find((name) => !Object.hasOwn(subjects, name));
if (unknown !== undefined) {
  console.error(`Nothing called ${unknown}; there are: ${Object.keys(subjects).join(", ")}.`);
  process.exit(1);
}

mkdirSync(folder, { recursive: true });
for (const [name, subject] of Object.entries(subjects)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  // the build is looked for when it is asked for
  const opener =
    subject.of === "pane"
      ? await openChromium()
      : await (await import("./built-pages")).openBuilt();
  try {
    await shoot(opener, name, subject, folder);
  } finally {
    await opener.close();
  }
}
await endBrowser();

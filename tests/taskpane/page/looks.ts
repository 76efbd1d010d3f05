/**
 * What a task of the pane must look like everywhere: its screens are gone through once, and each of them is
 * looked at as wide and as dark as a pane may be. axe takes most of the time: it looks at one screen light
 * and at the next one dark, or with LOOKS=all at every screen both ways.
 */
import type { Page } from "playwright-core";
import { type Rules, screenFaults } from "./checks";
import type { PaneBrowser } from "./open-page";
import type { Look } from "./scenes";

const looks = [
  { width: 320, colorScheme: "light" },
  { width: 340, colorScheme: "dark" },
  // a pane of 340 px at 200 % zoom: what axe looks at is as it was at 320
  { width: 170, colorScheme: "light" },
] as const;

/** What axe looks at in each look of a screen. */
function rulesOf(screen: number): readonly (Rules | "none")[] {
  if (process.env.LOOKS === "all") return ["all", "colours", "none"];
  return screen % 2 === 0 ? ["all", "none", "none"] : ["none", "all", "none"];
}

const [first] = looks;
const sizeOf = (width: number) => ({ width, height: 700 });

/** Other colours come with the next drawing or the one after it: waits until some drawings are alike. */
const settled = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const looks = () => {
      const shown = [...document.querySelectorAll("body *")].slice(0, 60).map((each) => {
        const { color, backgroundColor } = getComputedStyle(each);
        return `${color} ${backgroundColor}`;
      });
      return shown.join();
    };
    for (let alike = 0, before = ""; alike < 4;) {
      await new Promise(requestAnimationFrame);
      const now = looks();
      alike = now === before ? alike + 1 : 0;
      before = now;
    }
  });

/** Every fault of what is on screen, in every look; the first look is there again afterwards. */
export async function faultsInEveryLook(page: Page, screen = 0): Promise<string[]> {
  const rules = rulesOf(screen);
  const faults: string[] = [];
  for (const at of [1, 2, 0] as const) {
    const { width, colorScheme } = looks[at];
    await page.setViewportSize(sizeOf(width));
    await page.emulateMedia({ colorScheme });
    await settled(page);
    const found = await screenFaults(page, width, rules[at]);
    faults.push(...found.map((fault) => `${String(width)} px, ${colorScheme}: ${fault}`));
  }
  return faults;
}

/** Every fault of every screen of a walk in every look, and what the page itself complained of. */
export async function faultsOnTheWay(
  chromium: PaneBrowser,
  query: string,
  walk: (page: Page, look: Look) => Promise<void>,
): Promise<string[]> {
  const { page, complaints } = await chromium.open(
    {
      viewport: sizeOf(first.width),
      colorScheme: first.colorScheme,
      reducedMotion: "reduce",
    },
    query,
  );
  const faults: string[] = [];
  let screens = 0;
  await walk(page, async (name) => {
    const found = await faultsInEveryLook(page, screens);
    screens += 1;
    faults.push(...found.map((fault) => `${name}, ${fault}`));
  });
  await page.context().close();
  return screens > 0 ? [...faults, ...complaints] : ["no screen was looked at"];
}

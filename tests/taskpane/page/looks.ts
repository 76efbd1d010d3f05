/**
 * What a task of the pane must look like everywhere: its screens are gone through once, and each of them is
 * looked at as wide and as dark as a pane may be. Where the run is not wide, one
 * look serves each screen: one light, the next one dark, the one after that narrow.
 */
import type { Page } from "playwright-core";
import { isWide } from "../../is-wide";
import { type Rules, screenFaults } from "./checks";
import type { PaneBrowser } from "./open-page";
import type { Look } from "./scenes";

const looks = [
  { width: 320, colorScheme: "light" },
  { width: 340, colorScheme: "dark" },
  // a pane of 340 px at 200 % zoom: what axe looks at is as it was at 320
  { width: 170, colorScheme: "light" },
] as const;

/** The looks of one screen, each with what axe looks at in it; the first look stands last, to go on from. */
function looksOf(screen: number): readonly (readonly [0 | 1 | 2, Rules | "none"])[] {
  if (isWide)
    return [
      [1, "colours"],
      [2, "none"],
      [0, "all"],
    ];
  return screen % 4 === 1
    ? [
        [1, "all"],
        [0, "none"],
      ]
    : screen % 4 === 3
      ? [
          [2, "none"],
          [0, "all"],
        ]
      : [[0, "all"]];
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
  const faults: string[] = [];
  for (const [at, rules] of looksOf(screen)) {
    const { width, colorScheme } = looks[at];
    await page.setViewportSize(sizeOf(width));
    await page.emulateMedia({ colorScheme });
    await settled(page);
    const found = await screenFaults(page, width, rules);
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

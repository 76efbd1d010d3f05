/** The screens of one task in every look, on contact sheets. */
import type { Page } from "playwright-core";
import type { PaneBrowser } from "../../../tests/taskpane/page/open-page";
import { contactSheet, type Shot } from "../../../tests/taskpane/page/sheet";
import type { Walk } from "./walks";

const looks = [320, 340].flatMap((width) =>
  (["light", "dark"] as const).map((colorScheme) => ({ width, colorScheme })),
);
type LookOf = (typeof looks)[number];

/** One look in detail; all looks at a glance, one under another. */
const large = { width: 340, tallest: 1100, perRow: 7 };
const small = { width: 120, tallest: 380 };

/** With motion reduced a colour still takes a hundredth of a millisecond, and so a frame. */
const settled = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    for (let frames = 0; frames < 3; frames += 1) await new Promise(requestAnimationFrame);
  });

async function shotsOf(chromium: PaneBrowser, walk: Walk, look: LookOf): Promise<Shot[]> {
  const { page, complaints } = await chromium.open(
    {
      viewport: { width: look.width, height: 700 },
      colorScheme: look.colorScheme,
      reducedMotion: "reduce",
    },
    walk.query,
  );
  const shots: Shot[] = [];
  await walk.through(page, async (name) => {
    await settled(page);
    shots.push({ name, png: await page.screenshot({ fullPage: true }) });
  });
  if (complaints.length > 0) console.error(complaints.join("\n"));
  await page.context().close();
  return shots;
}

/** @param folder ends in a slash */
export async function shoot(
  chromium: PaneBrowser,
  task: string,
  walks: readonly Walk[],
  folder: string,
): Promise<void> {
  const { page } = await chromium.open();
  const all: Shot[] = [];
  let perRow = 1;
  for (const look of looks) {
    const shots: Shot[] = [];
    for (const walk of walks) shots.push(...(await shotsOf(chromium, walk, look)));
    const named = `${look.width}-${look.colorScheme}`;
    await contactSheet(page.context(), shots, large, `${folder}${task}-${named}.png`);
    console.log(`shots/${task}-${named}.png`);
    all.push(...shots.map(({ name, png }) => ({ name: `${named}: ${name}`, png })));
    perRow = shots.length;
  }
  await contactSheet(page.context(), all, { ...small, perRow }, `${folder}${task}.png`);
  console.log(`shots/${task}.png`);
  await page.context().close();
}

/** The screens of one subject in every look, on contact sheets. */
import type { BrowserContextOptions, Page } from "playwright-core";
import { contactSheet, type Shot } from "./contact-sheet";
import type { Opener } from "./built-pages";
import type { Subject, Walk } from "./walks";

interface LookOf {
  readonly width: number;
  readonly colorScheme: "light" | "dark";
}

const looksOf = ({ widths }: Subject): LookOf[] =>
  widths.flatMap((width) =>
    (["light", "dark"] as const).map((colorScheme) => ({ width, colorScheme })),
  );

/** One look in detail; all looks at a glance, one under another. */
const large = (width: number) =>
  width > 500 ? { width: 700, tallest: 1400, perRow: 4 } : { width: 340, tallest: 1100, perRow: 7 };
const small = { width: 120, tallest: 380 };

/** With motion reduced a colour still takes a hundredth of a millisecond, and so a frame. */
const settled = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    for (let frames = 0; frames < 3; frames += 1) await new Promise(requestAnimationFrame);
  });

/** tsx names inner functions by a helper of its own, which a page does not have. */
export const letNamesBe = (page: Page) => page.evaluate("globalThis.__name ??= (named) => named");

async function shotsOf(opener: Opener, walk: Walk, look: LookOf): Promise<Shot[]> {
  const options: BrowserContextOptions = {
    viewport: { width: look.width, height: look.width > 500 ? 850 : 700 },
    colorScheme: look.colorScheme,
    reducedMotion: "reduce",
  };
  const { page, complaints } = await opener.open(options, walk.at);
  await letNamesBe(page);
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
  opener: Opener,
  named: string,
  subject: Subject,
  folder: string,
): Promise<void> {
  const { page } = await opener.open();
  const all: Shot[] = [];
  let perRow = 1;
  for (const look of looksOf(subject)) {
    const shots: Shot[] = [];
    for (const walk of subject.walks) shots.push(...(await shotsOf(opener, walk, look)));
    const called = `${look.width}-${look.colorScheme}`;
    await contactSheet(page.context(), shots, large(look.width), `${folder}${named}-${called}.png`);
    console.log(`shots/${named}-${called}.png`);
    all.push(...shots.map(({ name, png }) => ({ name: `${called}: ${name}`, png })));
    perRow = shots.length;
  }
  await contactSheet(page.context(), all, { ...small, perRow }, `${folder}${named}.png`);
  console.log(`shots/${named}.png`);
  await page.context().close();
}

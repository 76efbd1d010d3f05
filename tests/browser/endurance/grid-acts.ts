/** What a person does in the grid, by keyboard where there is one for it. */
import { goTo } from "../workbench-page";
import type { PageWorld } from "./page-world";

/** Long enough for the grid to do what it was told. */
const settle = (world: PageWorld) => world.page.waitForTimeout(120);

/** Of the file charts.xlsx: it takes nothing, and says so. */
const protectedSheet = "Totals!";

export async function typeInACell(world: PageWorld): Promise<void> {
  const { page, chance, typed } = world;
  await world.explain();
  const address = `${chance.of(["B", "C", "D", "E", "F"])}${String(chance.whole(30, 40))}`;
  await goTo(page, address);
  const heading = await page.locator("#pane h2").first().innerText();
  const place = `${heading.slice(0, heading.lastIndexOf(" "))}!${address}`;
  const isProtected = place.startsWith(protectedSheet);
  const before = typed.cells.get(place);
  if (!isProtected && typed.isFilled(place) && chance.is(0.15)) {
    await page.keyboard.press("Delete");
    typed.edit({ kind: "cell", place, before, after: "" });
    return settle(world);
  }
  const number = world.fresh();
  const text = chance.of([
    String(number + 0.25),
    `ferry ${String(number)}`,
    `=${String(number)}+1`,
  ]);
  await page.keyboard.type(text, { delay: 10 });
  await page.keyboard.press(chance.of(["Enter", "Tab"]));
  if (isProtected) {
    await page.locator("#news-words").getByText("is protected").waitFor({ timeout: 5_000 });
    return settle(world);
  }
  typed.edit({ kind: "cell", place, before, after: text });
  await settle(world);
}

export async function undo(world: PageWorld): Promise<void> {
  if (world.typed.done.length === 0) return;
  await world.page.click("#undo");
  world.typed.undo();
  await settle(world);
}

export async function redo(world: PageWorld): Promise<void> {
  if (world.typed.undone.length === 0) return;
  await world.page.click("#redo");
  world.typed.redo();
  await settle(world);
}

/** The names at the foot of the grid. */
const tabs = "#grid [data-u-comp=slide-tab-item]";

export async function changeSheet(world: PageWorld): Promise<void> {
  const all = world.page.locator(tabs);
  const count = await all.count();
  if (count < 2) return;
  await all.nth(world.chance.whole(0, count - 1)).click();
  // within 300 ms a second click would be a double one, which is for renaming
  await world.page.waitForTimeout(600);
}

/** Files and the page itself: saved, opened, shared, reloaded. */
import { readFileSync } from "node:fs";
import { chooserOf, goTo, standing } from "../workbench-page";
import type { PageWorld } from "./page-world";

/** The bytes that the page hands out when this is done. */
async function handedOut({ page }: PageWorld, what: () => Promise<void>): Promise<Uint8Array> {
  const [download] = await Promise.all([
    page.waitForEvent("download", { timeout: 60_000 }),
    what(),
  ]);
  return new Uint8Array(readFileSync(await download.path()));
}

export async function save(world: PageWorld): Promise<void> {
  const { page, typed } = world;
  const bytes = await handedOut(world, () => page.keyboard.press("Control+s"));
  await standing(page, "saved in the file");
  typed.check(bytes);
  typed.save();
  world.saved = bytes;
}

/** A copy for a partner; the workbook itself stays as it is, edits and all. */
export async function share(world: PageWorld): Promise<void> {
  const { page, typed } = world;
  await page.locator("#pane nav").getByRole("button", { name: "Share" }).click();
  const name = world.chance.of(["Partner copy", "Numbers only"]);
  const make = page.getByRole("button", { name, disabled: false });
  await make.waitFor({ timeout: 15_000 });
  const before = await page.locator("#file-name").innerText();
  typed.checkCopy(await handedOut(world, () => make.click()));
  await page.getByText("The copy is made.").waitFor();
  const after = await page.locator("#file-name").innerText();
  if (after !== before) throw new Error(`sharing made "${before}" into "${after}"`);
}

/** Another file, or the one that was saved last. */
export async function open(world: PageWorld): Promise<void> {
  const { page, typed, chance } = world;
  const isAgain = world.saved !== undefined && !typed.isUnsaved && chance.is(0.5);
  const again = {
    name: `again-${String(world.fresh())}.xlsx`,
    bytes: world.saved ?? new Uint8Array(),
  };
  const { name, bytes } = isAgain ? again : world.book();
  const chooser = await chooserOf(page);
  const mimeType = "application/octet-stream";
  await chooser.setFiles({ name, mimeType, buffer: Buffer.from(bytes) });
  // edits are kept, and nobody is asked
  await page.locator("#file-name").getByText(name).waitFor({ timeout: 60_000 });
  if (isAgain) typed.reopen();
  else {
    typed.open(bytes);
    world.saved = undefined;
  }
}

export async function reload(world: PageWorld): Promise<void> {
  const { page, chance } = world;
  // at any moment: while a file is being written, or a cell typed into
  if (chance.is(0.2)) await page.keyboard.press("Control+s");
  else if (chance.is(0.2)) {
    await world.explain();
    await goTo(page, "B33");
    await page.keyboard.type("half a w", { delay: 10 });
  }
  await world.reload();
  for (const task of ["Titrate", "Batch", "What if"] as const) {
    if (chance.is(0.5)) await world.openTask(task);
  }
}

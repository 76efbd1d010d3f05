/** Files and the page itself: saved, opened, shared, reloaded. */
import { readFileSync } from "node:fs";
import { chooserOf, goTo, standing } from "../workbench-page";
import type { File, PageWorld } from "./page-world";

/** The bytes that the page hands out when this is done. */
async function handedOut(
  { page }: PageWorld,
  what: () => Promise<void>,
): Promise<{ readonly name: string; readonly bytes: Uint8Array }> {
  const [download] = await Promise.all([
    page.waitForEvent("download", { timeout: 60_000 }),
    what(),
  ]);
  const bytes = new Uint8Array(readFileSync(await download.path()));
  return { name: download.suggestedFilename(), bytes };
}

export async function save(world: PageWorld): Promise<void> {
  const { page, typed } = world;
  const file = await handedOut(world, () => page.keyboard.press("Control+s"));
  await standing(page, "saved in the file");
  typed.check(file.bytes);
  typed.save();
  world.saved = file;
}

/** A copy for a partner; the workbook itself stays as it is, edits and all. */
export async function share(world: PageWorld): Promise<void> {
  const { page, typed } = world;
  await page.locator("#pane nav").getByRole("button", { name: "Share" }).click();
  const name = world.chance.of(["Partner copy", "Numbers only"]);
  const make = page.getByRole("button", { name, disabled: false });
  await make.waitFor({ timeout: 15_000 });
  const before = await page.locator("#file-name").innerText();
  typed.checkCopy((await handedOut(world, () => make.click())).bytes);
  await page.getByText("The copy is made.").waitFor();
  const after = await page.locator("#file-name").innerText();
  if (after !== before) throw new Error(`sharing made "${before}" into "${after}"`);
}

/** What was saved last, as it was named; or renamed, as which nobody knows it. */
async function savedBefore(world: PageWorld, { name, bytes }: File): Promise<File> {
  const isShown = (await world.page.locator("#file-name").innerText()) === name;
  const isRenamed = isShown || world.chance.is(0.5);
  return isRenamed ? { name: `again-${String(world.fresh())}.xlsx`, bytes } : { name, bytes };
}

/** Another file, or the one that was saved last. */
export async function open(world: PageWorld): Promise<void> {
  const { page, typed, chance } = world;
  const again =
    world.saved && !typed.isUnsaved && chance.is(0.5)
      ? await savedBefore(world, world.saved)
      : undefined;
  const { name, bytes } = again ?? world.book();
  const chooser = await chooserOf(page);
  const mimeType = "application/octet-stream";
  await chooser.setFiles({ name, mimeType, buffer: Buffer.from(bytes) });
  // edits are kept, and nobody is asked
  await page.locator("#file-name").getByText(name).waitFor({ timeout: 60_000 });
  world.isBeside(name);
  if (again) typed.reopen();
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

/** What a person does on the page, by keyboard where there is one for it. */
import { readFileSync } from "node:fs";
import { fillBlank, fillOil, fillTitrant, fillTitres } from "../../taskpane/page/bench";
import { goTo } from "../workbench-page";
import { fields, type PageWorld, type TaskName } from "./page-world";

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
  const before = typed.cells.get(place) ?? "";
  if (before !== "" && chance.is(0.15)) {
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
  if (place.startsWith(protectedSheet)) {
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
  await settle(world);
}

export async function typeInATask(world: PageWorld): Promise<void> {
  const { page, chance, drafts } = world;
  const task = chance.of<TaskName>(["Titrate", "Batch", "What if"]);
  if (!(await world.openTask(task))) return;
  const label = chance.of(fields[task]);
  const text = chance.of(["0.5", "0.05", "0.1", "100", "25"]);
  await world.field(label).focus();
  await page.keyboard.press("Control+A");
  await page.keyboard.type(text);
  drafts.set(`${task}/${label}`, text);
}

export async function reload(world: PageWorld): Promise<void> {
  await world.reload();
  for (const task of ["Titrate", "Batch", "What if"] as const) {
    if (world.chance.is(0.5)) await world.openTask(task);
  }
}

export async function save(world: PageWorld): Promise<void> {
  const { page, typed } = world;
  const [download] = await Promise.all([
    page.waitForEvent("download", { timeout: 60_000 }),
    page.keyboard.press("Control+s"),
  ]);
  const bytes = new Uint8Array(readFileSync(await download.path()));
  await page.locator("#file-name").getByText("(not saved)").waitFor({ state: "detached" });
  typed.check(bytes);
  typed.save();
  world.saved = bytes;
}

/** Another file, or the one that was saved last. */
export async function open(world: PageWorld): Promise<void> {
  const { page, typed, chance } = world;
  const isAgain = world.saved !== undefined && !typed.isUnsaved && chance.is(0.5);
  const again = {
    name: `again-${String(world.fresh())}.xlsx`,
    bytes: world.saved ?? new Uint8Array(),
  };
  const { name, bytes } = isAgain ? again : world.fixture();
  const wasUnsaved = typed.isUnsaved;
  await page.focus("#open");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.keyboard.press("Enter"),
  ]);
  const mimeType = "application/octet-stream";
  await chooser.setFiles({ name, mimeType, buffer: Buffer.from(bytes) });
  const lose = page.getByRole("button", { name: "Open without saving" });
  const fileName = page.locator("#file-name").getByText(name);
  await fileName.or(lose).first().waitFor({ timeout: 60_000 });
  if (await lose.isVisible()) await lose.click();
  else if (wasUnsaved) throw new Error("another file was opened over edits, and nobody asked");
  await fileName.waitFor({ timeout: 60_000 });
  if (isAgain) typed.reopen();
  else {
    typed.forget();
    world.saved = undefined;
  }
}

const recordThis = /^Record this /;

/** A whole titration by keyboard, into the logbook. */
export async function recordATitration(world: PageWorld): Promise<void> {
  const { page, hand, typed, drafts } = world;
  await world.openTask("Titrate");
  const lot = `E-${String(world.fresh())}`;
  const slip = { lot, titres: ["2.40", "2.50", "2.45"], blanks: ["0.15"] };
  await page.locator("#pane").focus();
  await fillTitrant(hand);
  await hand.next("Oil");
  await fillOil(hand, slip);
  await hand.next("Blank");
  await fillBlank(hand, slip);
  await hand.next("Replicates");
  await fillTitres(hand, slip);
  await hand.next("Result");
  await hand.next("Record");
  await page.getByRole("button", { name: recordThis }).waitFor();
  await hand.press(recordThis);
  await page
    .getByText(/Written in row/)
    .locator("visible=true")
    .waitFor({ timeout: 30_000 });
  typed.edit({ kind: "row", lot });
  drafts.set("Titrate/May be off by, ± %", "0.5");
  drafts.set("Titrate/Read to, mL", "0.05");
  await page.getByRole("button", { name: "Next titration" }).click();
  await world.field("Read to, mL").waitFor();
}

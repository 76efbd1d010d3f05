/** What a person does in the pane's tasks. */
import { catalystByHand, kilogramsByHand } from "../../endurance/by-hand";
import { fillSlip } from "../../taskpane/page/bench";
import { fields, type PageWorld, type TaskName } from "./page-world";

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

const recordThis = /^Record this /;

/** The page goes and comes again: every titre is still there. */
async function breakOff(world: PageWorld, titres: readonly string[]): Promise<void> {
  const { page } = world;
  await world.reload();
  await world.openTask("Titrate");
  await world.step(4).click();
  for (const [at, titre] of titres.entries()) {
    const words = new RegExp(`^Leave out Titre ${String(at + 1)}$`, "i");
    await page.getByRole("button", { name: words }).waitFor({ timeout: 15_000 });
    const said = await page.locator("#pane").innerText();
    if (!said.includes(titre)) throw new Error(`the titre ${titre} is not there after a reload`);
  }
  await page.locator("#pane").focus();
}

/** A partner copy takes no row: it is said, what was typed is kept under Earlier titrations, and life goes on. */
async function isRefused({ page, hand }: PageWorld): Promise<void> {
  await page
    .getByText(/This workbook is a partner copy/)
    .locator("visible=true")
    .waitFor();
  await hand.press("Earlier titrations");
  await hand.press("New titration");
}

/** A whole titration by keyboard, into the logbook; one titre left out, or broken off, now and then. */
export async function recordATitration(world: PageWorld): Promise<void> {
  const { page, hand, typed, drafts, chance } = world;
  await world.openTask("Titrate");
  const number = world.fresh();
  const lot = `E-${String(number)}`;
  const odd = 3 + number / 100;
  const isOmitted = chance.is(0.4);
  const titres = ["2.40", "2.50", ...(isOmitted ? [odd.toFixed(2)] : []), "2.45"];
  const slip = { lot, titres, blanks: ["0.15"] };
  await page.locator("#pane").focus();
  await fillSlip(hand, slip);
  drafts.set("Titrate/Accurate to ±, %", "0.5");
  drafts.set("Titrate/Smallest burette mark, mL", "0.05");
  if (chance.is(0.25)) await breakOff(world, titres);
  if (isOmitted) {
    await hand.press("Leave out Titre 3");
    await hand.choose("Why leave out titre 3?", "spilt");
    await hand.press("Leave out titre 3");
    await page.getByText("Omitted: spilt").waitFor();
  }
  await hand.next("Result");
  await hand.next("Record");
  if (typed.isPartnerCopy) {
    await isRefused(world);
    return;
  }
  await page.getByRole("button", { name: recordThis }).waitFor();
  await hand.press(recordThis);
  await page
    .getByText(/Written in row/)
    .locator("visible=true")
    .waitFor({ timeout: 30_000 });
  const row = { lot, titres: [2.4, 2.5, 2.45], omitted: isOmitted ? odd : undefined, blank: 0.15 };
  typed.edit({ kind: "row", row });
  await page.getByRole("button", { name: "Earlier titrations" }).click();
  await page.getByRole("button", { name: "New titration" }).click();
  await world.step(1).waitFor();
}

/** By its own button: what was asked before is remembered, and Next passes over it. */
async function toStep({ page, step }: PageWorld, at: number, name: string): Promise<void> {
  await step(at).press("Enter");
  await page.getByRole("heading", { level: 2, name }).waitFor();
}

/** Sizes against acid values, on a sheet of their own. */
export async function writeAWhatIf(world: PageWorld): Promise<void> {
  const { page, hand, typed, drafts, chance } = world;
  await world.openTask("What if");
  const sizes = chance.of(["100", "50 100 200", "20 45"]);
  const acids = chance.of(["2", "0.5 1.5 3", "1 4"]);
  await page.locator("#pane").focus();
  await hand.type("Batch sizes", sizes);
  drafts.set("What if/Batch sizes, L", sizes);
  await toStep(world, 2, "Compare");
  await hand.type("Acid values to compare", acids);
  await hand.type("Assay of the lye", "90");
  await hand.type("Base charge, pure", "0.765");
  await toStep(world, 3, "Table");
  await toStep(world, 4, "Write");
  await page.getByRole("button", { name: "Write this table" }).waitFor();
  await hand.press("Write this table");
  const said = page.getByText(/Written in .* of the sheet /).locator("visible=true");
  await said.waitFor({ timeout: 30_000 });
  const name = /of the sheet (.*)\.$/.exec(await said.innerText())?.[1] ?? "";
  const doses = sizes.split(" ").flatMap((size) => {
    const kilograms = kilogramsByHand(Number(size), "l");
    return acids
      .split(" ")
      .map((acid) => catalystByHand(kilograms, Number(acid), "KOH", 90, 0.765));
  });
  typed.edit({ kind: "sheet", name, doses });
}

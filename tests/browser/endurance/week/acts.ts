/** What is done in a week on the page; each act says what one Undo takes back, if it does. */
import type { Line } from "../../../endurance/week/model";
import type { PageWeek } from "./page-week";

/** A step of the grid, or one in the file, which is told when it is taken back. */
export type Back = "in the grid" | "in the file" | undefined;

const isBegun = ({ lot }: Line): boolean => lot !== undefined;

const titre = ({ chance }: PageWeek): number => chance.whole(5, 900) / 100;

/** Into the first row that is not begun. */
async function record(week: PageWeek): Promise<Back> {
  const { model, world } = week;
  const at = model.lines.findIndex((line) => !isBegun(line));
  if (at < 0) return insertRows(week);
  const line = { lot: world.fresh(), titre: titre(week) };
  await week.type(at, world.lot, line.lot);
  await week.type(at, world.titre, String(line.titre));
  model.lines[at] = line;
  return undefined;
}

async function editALine(week: PageWeek): Promise<Back> {
  const { model, chance, world } = week;
  const at = chance.whole(0, model.lines.length - 1);
  const line = model.lines[at];
  if (!line || !isBegun(line)) return undefined;
  const now = titre(week);
  if (now === line.titre) return undefined;
  await week.type(at, world.titre, String(now));
  model.lines[at] = { ...line, titre: now };
  return "in the grid";
}

async function insertRows(week: PageWeek): Promise<Back> {
  const { model, chance } = week;
  if (chance.is(0.2) || model.lines.length < 2) {
    await week.toLine(-2, 0);
    await week.tool("Insert rows above");
    await week.says("1 row inserted above");
    model.insert(model.top - 1, 1);
    return "in the file";
  }
  const at = chance.whole(1, model.lines.length - 1);
  await week.toLine(at, 0);
  await week.tool("Insert rows above");
  await week.says("1 row inserted above");
  model.insert(model.top + 1 + at, 1);
  return "in the file";
}

/** One is asked where a formula elsewhere would lose its cell. */
async function deleteARow(week: PageWeek): Promise<Back> {
  const { model, chance, page } = week;
  if (model.lines.length < 2) return undefined;
  const at = chance.whole(0, model.lines.length - 1);
  await week.toLine(at, 0);
  await week.tool("Delete rows");
  const asked = page.locator("#ask-act").getByRole("button", { name: "Delete" });
  const said = page.locator("#news-words").getByText(/^Row \d+ of .* deleted/);
  await asked.or(said).first().waitFor({ timeout: 60_000 });
  if (await asked.isVisible()) await asked.click();
  await said.waitFor({ timeout: 60_000 });
  model.delete(model.top + 1 + at, 1);
  return "in the file";
}

/** Rows not begun stay at the end; each row put in by hand, one after the other. */
async function sort(week: PageWeek): Promise<Back> {
  const { model, chance, world } = week;
  const isDown = chance.is(0.5);
  await week.toLine(0, world.titre);
  await week.tool(isDown ? "Largest first" : "Smallest first");
  await week.says(/^(Sorted by|The \d+ rows? stands? in that order|1 row stands)/);
  const isStill = (await week.page.locator("#news-words").innerText()).includes("already");
  const filled = model.lines.filter(isBegun);
  const waiting = model.lines.filter((line) => !isBegun(line));
  const order: Line[] = [];
  for (const line of filled) {
    const later = order.findIndex(({ titre: other = 0 }) =>
      isDown ? other < (line.titre ?? 0) : other > (line.titre ?? 0),
    );
    order.splice(later < 0 ? order.length : later, 0, line);
  }
  model.lines.splice(0, model.lines.length, ...order, ...waiting);
  return isStill ? undefined : "in the grid";
}

async function filterAndShow(week: PageWeek): Promise<Back> {
  const { page, chance, world } = week;
  if (!week.model.lines.some(isBegun)) return undefined;
  await week.toLine(0, world.titre);
  await week.tool("Filter");
  const panel = page.locator(".tools-panel");
  await panel.getByLabel("At least").fill(String(chance.whole(1, 8)));
  await panel.getByRole("button", { name: "Filter" }).click();
  await week.says("Filtered by");
  if (chance.is(0.5)) await week.save();
  await week.tool("Show all rows");
  await week.says(/^All \d+ rows? shows?/);
  return undefined;
}

const names = ["Titrations", "Oil & lye", "2026", "Kai's (3)", "R1C1", "a-b", "TRUE"];

async function rename(week: PageWeek): Promise<Back> {
  const { model, chance, page } = week;
  const name = chance.of(names.filter((each) => !model.sheets.includes(each)));
  await week.toTitrations();
  const field = page.locator("#grid [data-u-comp=slide-tab-item] [contenteditable=true]");
  for (let tries = 0; tries < 20 && (await field.count()) === 0; tries += 1) {
    await week.tab(model.sheet).dblclick();
    await page.waitForTimeout(100);
  }
  await page.keyboard.press("Control+a");
  await page.keyboard.type(name, { delay: 20 });
  await page.keyboard.press("Enter");
  await week.says(`is now called ${name}.`);
  model.sheets[model.sheets.indexOf(model.sheet)] = name;
  model.sheet = name;
  return "in the file";
}

const notBack = (act: (week: PageWeek) => Promise<void>) => (week: PageWeek) =>
  act(week).then(() => undefined);

export const pageActs: readonly (readonly [
  weight: number,
  act: readonly [string, (week: PageWeek) => Promise<Back>],
])[] = [
  [8, ["record", record]],
  [4, ["edit a line", editALine]],
  [4, ["insert rows", insertRows]],
  [3, ["delete a row", deleteARow]],
  [1.5, ["sort", sort]],
  [0.7, ["filter and show", filterAndShow]],
  [1, ["rename", rename]],
  [2, ["save", notBack((week) => week.save())]],
  [1, ["reload", notBack((week) => week.reload())]],
  [0.7, ["open again", notBack((week) => week.openAgain())]],
];

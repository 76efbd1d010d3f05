/** The week's logbook on the page: what is done there by keyboard, and the file that the page saves. */
import type { Page } from "playwright-core";
import type { Chance } from "../../../endurance/chance";
import { type Model } from "../../../endurance/week/model";
import { WeekWorld } from "../../../endurance/week/world";
import { opened } from "../../../workbench/file";
import { goTo, gridIsReady, openBytes, saveByKeyboard, standing } from "../../workbench-page";

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
const patience = { timeout: 60_000 };

export class PageWeek {
  readonly world: WeekWorld;

  constructor(
    readonly chance: Chance,
    readonly page: Page,
    private readonly address: string,
  ) {
    this.world = new WeekWorld(chance);
    page.on("dialog", (dialog) => void dialog.accept());
    page.on("filechooser", () => undefined);
  }

  get model(): Model {
    return this.world.model;
  }

  async start(): Promise<void> {
    await this.page.goto(this.address);
    await gridIsReady(this.page);
    await this.page.waitForSelector("#save:enabled", patience);
    await openBytes(this.page, "week.xlsx", this.world.workbook.file.bytes);
    await this.toTitrations();
  }

  /** The names at the foot of the grid. */
  tab = (name: string) =>
    this.page.locator("#grid [data-u-comp=slide-tab-item]").getByText(name, { exact: true });

  async toTitrations(): Promise<void> {
    await this.tab(this.model.sheet).click();
    // within 300 ms a second click would be a double one, which is for renaming
    await this.page.waitForTimeout(350);
  }

  says = (words: string | RegExp) =>
    this.page.locator("#news-words").getByText(words).first().waitFor(patience);

  /** To a cell of a line of the table, counted from 0. */
  async toLine(at: number, column: number): Promise<void> {
    await goTo(this.page, `${letters.charAt(column)}${String(this.model.top + 2 + at)}`);
  }

  async type(at: number, column: number, text: string): Promise<void> {
    await this.toLine(at, column);
    await this.page.keyboard.type(text, { delay: 5 });
    await this.page.keyboard.press("Enter");
  }

  /** Something of the menu of the button Sheet. */
  async tool(words: string): Promise<void> {
    await this.page.focus("#tools");
    await this.page.keyboard.press("Enter");
    const item = this.page.getByRole("menuitem", { name: new RegExp(`^${words}`) }).first();
    await item.waitFor();
    await item.focus();
    await this.page.keyboard.press("Enter");
  }

  /** The file as the page hands it out, held against what should be in it. */
  async save(): Promise<void> {
    const { bytes } = await saveByKeyboard(this.page);
    this.world.workbook = opened(bytes);
    this.world.check();
  }

  async reload(): Promise<void> {
    const words = this.page.locator("#standing");
    await words.getByText("not kept yet").waitFor({ state: "detached", ...patience });
    await this.page.reload();
    await gridIsReady(this.page);
    await this.page.waitForSelector("#save:enabled", patience);
    await this.toTitrations();
  }

  async openAgain(): Promise<void> {
    await this.save();
    await standing(this.page, "saved in the file");
    await openBytes(this.page, "week.xlsx", this.world.workbook.file.bytes);
    await this.toTitrations();
  }
}

/** The built page under one seed's hands: what it does, and the model of what it should hold. */
import type { Page } from "playwright-core";
import { Chance } from "../../endurance/chance";
import { BenchHand } from "../../taskpane/page/bench";
import type { OpenPage } from "../browser";
import { gridIsReady } from "../workbench-page";
import { bookToOpen } from "./books";
import { Typed } from "./typed";

export type TaskName = "Titrate" | "Batch" | "What if";

/** A field of each task's first step. */
export const fields: Record<TaskName, readonly string[]> = {
  Titrate: ["Accurate to ±, %", "Smallest burette mark, mL"],
  Batch: ["Amount of oil, L"],
  "What if": ["Batch sizes, L"],
};

export interface File {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export class PageWorld {
  readonly chance: Chance;
  readonly typed = new Typed();
  /** What was typed into the pane beside the workbook that is open, by field. */
  drafts = new Map<string, string>();
  /** By the name of its file, without the date of a save; the example has none. */
  private readonly draftsOf = new Map([["", this.drafts]]);
  readonly hand: BenchHand;
  readonly tally = new Map<string, number>();
  /** The last file that was saved. */
  saved: File | undefined;
  private count = 0;

  constructor(
    seed: number,
    readonly opened: OpenPage,
    private readonly address: string,
  ) {
    this.chance = new Chance(seed);
    this.hand = new BenchHand(this.page);
    this.page.on("dialog", (dialog) => void dialog.accept());
    // heard from now on: Enter is quicker than the first call to listen
    this.page.on("filechooser", () => undefined);
  }

  get page(): Page {
    return this.opened.page;
  }

  /** A number not had before. */
  fresh = (): number => (this.count += 1);

  async start(): Promise<void> {
    await this.page.goto(this.address);
    await this.isReady();
    await this.opensWithTheSample();
  }

  /** As this build has it. */
  private async opensWithTheSample(): Promise<void> {
    const answer = await this.page.request.get(`${this.address}logbook.xlsx`);
    this.typed.open(await answer.body());
  }

  private async isReady(): Promise<void> {
    await gridIsReady(this.page);
    await this.page.waitForSelector("#save:enabled", { timeout: 60_000 });
  }

  /** Whatever the page says it keeps is there again; it is asked before anything else is lost. */
  async reload(): Promise<void> {
    const words = this.page.locator("#standing");
    await words.getByText("not kept yet").waitFor({ state: "detached", timeout: 60_000 });
    const isKept = (await words.innerText()) !== "";
    if (this.typed.isUnsaved && !isKept) throw new Error("edits are nowhere, and nothing is said");
    await this.page.reload();
    await this.isReady();
    if (isKept && (await words.innerText()) === "") throw new Error("what was kept is not there");
    this.typed.loadAgain();
  }

  /** Another workbook has its own drafts: those of before, where it was open before. */
  isBeside(file: string): void {
    const name = file.replace(/ \d{4}-\d\d-\d\d \d{4}(?=\.xlsx$)/, "");
    this.drafts = this.draftsOf.get(name) ?? new Map<string, string>();
    this.draftsOf.set(name, this.drafts);
  }

  async explain(): Promise<void> {
    await this.page.locator("#pane nav").getByRole("button", { name: "This cell" }).click();
  }

  /** @returns false for a batch in a workbook that holds no lots: there is nothing to type into */
  async openTask(name: TaskName): Promise<boolean> {
    await this.page.locator("#pane nav").getByRole("button", { name, exact: true }).click();
    const field = this.field(fields[name][0] ?? "");
    const goOn = this.page.getByRole("button", { name: /^Go on with/ }).locator("visible=true");
    const noLots = this.page.getByRole("button", { name: "Look again" }).locator("visible=true");
    const firstStep = this.step(1);
    await firstStep.or(goOn).or(noLots).first().waitFor({ timeout: 15_000 });
    if (await noLots.first().isVisible()) return false;
    if (await goOn.first().isVisible()) await goOn.first().click();
    await firstStep.click();
    await field.waitFor({ timeout: 15_000 });
    await this.checkTask(name);
    return true;
  }

  field = (label: string) =>
    this.page
      .locator("#pane")
      .getByRole("textbox", { name: label.split(",")[0] ?? label })
      .locator("visible=true")
      .first();

  /** The way to a step of the task that is open, counted from 1. */
  step = (at: number) =>
    this.page
      .locator("#pane")
      .getByRole("button", { name: new RegExp(`^${String(at)} .*, (done|part done|to do)$`) })
      .locator("visible=true")
      .first();

  /** What was typed into a task's first step is still there. */
  private async checkTask(name: TaskName): Promise<void> {
    for (const label of fields[name]) {
      const wanted = this.drafts.get(`${name}/${label}`);
      if (wanted === undefined) continue;
      const found = await this.field(label).inputValue();
      if (found !== wanted) throw new Error(`${name}: ${label} holds "${found}", not "${wanted}"`);
    }
  }

  /** A workbook under a name not had before. */
  book(): File {
    const { name, bytes } = bookToOpen(this.chance);
    return { name: `${name}-${String(this.fresh())}.xlsx`, bytes };
  }
}

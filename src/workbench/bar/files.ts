/**
 * Opening and saving, from the bar, the keyboard and by dropping a file. A refusal leaves the open
 * workbook as it is; what is open is given up only when the new one has been read.
 */
import type { FileFacts } from "../../host/workbench/file-facts";
import { isRefused, type Refusal } from "../../sheet/refusal";
import type { GridState } from "../file/grid-state";
import { firstVisible } from "../file/opened-file";
import type { ReadFile } from "../file/read-file";
import type { Session } from "../file/session";
import type { Grid } from "../grid/mount";
import type { Keeper } from "../keeping/keeper";
import type { Page } from "../page";
import { Acts } from "./acts";
import { askBeforeLosing } from "./ask";
import { savedInto } from "./deliver";
import { type SavePlace, savePlace } from "./disk";
import { filePart } from "./file-part";
import { showName } from "./name-shown";
import { openedWords, reopenedWords } from "./opened-words";
import type { Origin } from "../keeping/origin";
import type { News } from "./news";
import { OpenWorkbook } from "./open-workbook";
import { OneAtATime } from "./one-at-a-time";
import { addsToFile, callsOurs, wordsOfVisit } from "./saved-words";

export class Files {
  private readonly one: OneAtATime;
  private readonly savedWords = wordsOfVisit();
  private readonly workbook: OpenWorkbook;
  /** Edits are on their way into a file, and in none yet. */
  isWriting = false;
  private isSaving = false;
  begun: () => void = () => undefined;
  /** Called with true before another workbook is laid out, with false when it is open, or is not. */
  isBetween: (isSo: boolean) => void = () => undefined;

  constructor(
    private readonly page: Page,
    private readonly grid: Grid,
    private readonly news: News,
    sample: GridState,
    shown: () => void,
    private readonly keeper: Keeper,
  ) {
    this.one = new OneAtATime(news);
    this.workbook = new OpenWorkbook(grid, keeper, sample, () => {
      this.named();
      shown();
    });
    new Acts(page, grid, news, this.workbook, this.one);
    keeper.follow(this);
    this.named();
    grid.edited.watch(() => this.named());
  }

  private get name(): string {
    return this.workbook.name;
  }

  get facts(): FileFacts {
    return this.workbook.facts;
  }

  named(): void {
    showName(this.page, this.keeper, this.name);
  }

  get isBusy(): boolean {
    return this.one.isBusy;
  }

  open(file: File, from: Origin = {}): Promise<void> {
    return this.one.do(() => this.instead(() => Promise.resolve(file), from));
  }

  /** An empty logbook of one's own. */
  begin(): Promise<void> {
    return this.one.do(async () => {
      const made = async () => (await filePart()).newFile();
      if (await this.instead(made, { isNew: true })) this.begun();
    });
  }

  /** False where the open workbook stays. */
  private async instead(fetched: () => Promise<File | Refusal>, from: Origin): Promise<boolean> {
    await this.grid.finishTyping();
    if (!(await this.mayGo())) return false;
    const file = await fetched();
    if (!isRefused(file)) return this.read(file, from);
    this.news.refuse(file.sentence);
    return false;
  }

  /** May the open workbook be given up? */
  private async mayGo(): Promise<boolean> {
    if (await this.keeper.now()) return true;
    const wish = await askBeforeLosing(this.page, this.name);
    if (wish === "save") return this.write();
    return wish === "lose";
  }

  private async read(file: File, from: Origin): Promise<boolean> {
    const { news } = this;
    news.clear();
    news.progress(`Reading ${file.name}.`);
    const { readFile } = await filePart();
    const read = await readFile(file);
    if (isRefused(read)) {
      news.refuse(read.sentence);
      return false;
    }
    this.isBetween(true);
    return this.show(file, read, from).finally(() => this.isBetween(false));
  }

  private async show(file: File, read: ReadFile, from: Origin): Promise<boolean> {
    const { news, grid, page } = this;
    const { name } = file;
    const state = await this.workbook.laid(file, read, page, news);
    if (!state) return false;
    grid.edited.set(false);
    await this.keeper.opened(name, read.bytes, from);
    this.workbook.shows(read.opened, state);
    const sheet = firstVisible(read.opened) ?? state.sheets[0]?.name ?? "";
    grid.select(from.entry?.place ?? { sheet, row: 0, column: 0 });
    const { isElsewhere } = this.keeper;
    if (from.entry) news.say(reopenedWords(from.entry, isElsewhere));
    else news.say(...openedWords(name, read.opened, grid, isElsewhere));
    return true;
  }

  /** Asked while the file is being worked on, it is saved after that; while it is being saved, if more was done. */
  save(): Promise<void> {
    if (!this.one.isBusy) return this.one.do(() => this.write());
    const isAgain = this.isSaving;
    this.one.afterwards(() =>
      isAgain && !this.grid.edited.now ? Promise.resolve() : this.write(),
    );
    return Promise.resolve();
  }

  /** False when it could not be saved: then the edits are in no file yet, whatever went wrong. */
  private async write(): Promise<boolean> {
    const { news, grid } = this;
    this.isWriting = grid.edited.now;
    this.isSaving = true;
    try {
      // first: a browser asks only right after a press
      const place = await savePlace(this.name, this.keeper.disk);
      if (!place) return false;
      const session = await this.workbook.current();
      await grid.finishTyping();
      await this.keeper.settled();
      news.clear();
      news.progress(`Saving ${session.name}.`);
      const { count } = grid.edited;
      return await this.intoFile(session, await grid.state(), place, count);
    } finally {
      this.isWriting = this.isSaving = false;
    }
  }

  private async intoFile(
    session: Session,
    now: GridState,
    place: SavePlace,
    count: number,
  ): Promise<boolean> {
    const { news, grid, keeper } = this;
    const saved = await savedInto(session, now, place);
    if (isRefused(saved)) {
      keeper.forgetDisk();
      news.refuse(`${session.name} was not saved. ${saved.sentence}`);
      return false;
    }
    // a sheet or a table that the file now has could otherwise be undone, and would stay in the file
    if (addsToFile(saved.edits)) {
      grid.forgetHistory();
      await session.forget();
    }
    await keeper.saved(session.name, saved.bytes, count, saved.disk);
    // no sooner: the bar would call saved what is in no file, and what was edited meanwhile
    if (grid.edited.count === count) grid.edited.set(false);
    this.workbook.settle(now);
    this.named();
    news.say(this.savedWords(saved.says, saved, callsOurs(now)));
    return true;
  }

  /** The file as it would be saved now, for the pane, and to be kept. */
  bytes(): Promise<Uint8Array | Refusal> {
    return this.workbook.bytes();
  }
}

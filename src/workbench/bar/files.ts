/**
 * Opening and saving, from the bar, the keyboard and by dropping a file. A refusal leaves the open
 * workbook as it is; what is open is given up only when the new one has been read.
 */
import { type FileFacts, noFacts } from "../../host/workbench/file-facts";
import { isRefused, type Refusal } from "../../sheet/refusal";
import type { GridState } from "../file/grid-state";
import { firstVisible } from "../file/opened-file";
import type { Session } from "../file/session";
import { type CellRule, factsOf, fileRules, fixedBy } from "../grid/fixed";
import type { Grid } from "../grid/mount";
import { unexpected } from "../../taskpane/unexpected";
import type { Page } from "../page";
import { askBeforeLosing } from "./ask";
import { download } from "./download";
import { filePart, sampleSession } from "./file-part";
import { affectedIn } from "./held-list";
import { laidOut } from "./laid-out";
import { begunWords, openedWords } from "./opened-words";
import type { News } from "./news";
import { demonstration, sampleFile } from "./sample-file";
import { addsToFile, callsOurs, wordsOfVisit } from "./saved-words";

export class Files {
  /** One thing at a time. */
  private isBusy = false;
  private tried = 0;
  private isSample = true;
  private readonly savedWords = wordsOfVisit();
  /** Edits are on their way into a file, and in none yet. */
  isWriting = false;
  private session: Session | undefined;
  private rules: ReadonlyMap<string, CellRule> = new Map();
  facts: FileFacts = noFacts;

  constructor(
    private readonly page: Page,
    private readonly grid: Grid,
    private readonly news: News,
    private readonly sample: GridState,
    private readonly shown: () => void,
  ) {
    this.settle(sample);
    grid.edited.watch(() => this.named());
  }

  /** The grid and the file agree. */
  private settle(state: GridState): void {
    this.grid.guard.fixed = fixedBy(state, this.facts, this.rules);
    this.named();
  }

  private get name(): string {
    return this.session?.name ?? sampleFile;
  }

  private async current(): Promise<Session> {
    const made = this.session ?? (await sampleSession(this.sample, this.grid));
    return (this.session ??= made);
  }

  /** The name in the bar and of the window, and whether all of it is saved. */
  private named(): void {
    const edited = this.grid.edited.now ? " (not saved)" : "";
    const name = this.isSample ? demonstration : this.name;
    this.page.fileName.textContent = `${name}${edited}`;
    document.title = `${this.name}${edited} - Titrebook`;
  }

  private async alone(work: () => Promise<void>): Promise<void> {
    if (this.isBusy) return;
    this.isBusy = true;
    try {
      await work();
    } catch (thrown) {
      unexpected(thrown);
      this.news.refuse(
        "That did not work. Look whether the workbook is as you left it: try again.",
      );
    } finally {
      this.isBusy = false;
    }
  }

  open(file: File): Promise<void> {
    return this.alone(async () => {
      await this.instead(() => Promise.resolve(file));
    });
  }

  /** An empty logbook of one's own. */
  begin(): Promise<void> {
    return this.alone(async () => {
      if (await this.instead(async () => (await filePart()).newFile())) this.news.say(begunWords);
    });
  }

  /** False where the open workbook stays. */
  private async instead(fetched: () => Promise<File | Refusal>): Promise<boolean> {
    await this.grid.finishTyping();
    if (!(await this.mayGo())) return false;
    const file = await fetched();
    if (!isRefused(file)) return this.read(file);
    this.news.refuse(file.sentence);
    return false;
  }

  /** May the open workbook be given up? */
  private async mayGo(): Promise<boolean> {
    if (!this.grid.edited.now) return true;
    const wish = await askBeforeLosing(this.page, this.name);
    if (wish === "save") return this.write();
    return wish === "lose";
  }

  private async read(file: File): Promise<boolean> {
    const { news, grid } = this;
    const { name } = file;
    news.clear();
    news.progress(`Reading ${name}.`);
    const { readFile, Session } = await filePart();
    const read = await readFile(file);
    if (isRefused(read)) {
      news.refuse(read.sentence);
      return false;
    }
    const { worker, opened } = read;
    this.tried += 1;
    const state = await laidOut(file, opened, this.tried, this.page, grid, news);
    if (!state) {
      worker.close();
      news.refuse(`${name} could not be laid out here. The workbook before it is still open.`);
      return false;
    }
    this.session?.close();
    this.session = Session.ofFile(name, worker, opened, state, affectedIn(grid));
    this.isSample = false;
    this.facts = factsOf(opened);
    this.rules = fileRules(opened);
    grid.edited.set(false);
    this.settle(state);
    this.shown();
    const sheet = firstVisible(opened) ?? state.sheets[0]?.name ?? "";
    grid.select({ sheet, row: 0, column: 0 });
    news.say(...openedWords(name, opened, grid));
    return true;
  }

  save(): Promise<void> {
    return this.alone(async () => {
      await this.write();
    });
  }

  /** False when it could not be saved: then the edits are in no file yet, whatever went wrong. */
  private async write(): Promise<boolean> {
    const { news, grid } = this;
    let isUnsaved = grid.edited.now;
    this.isWriting = isUnsaved;
    try {
      const session = await this.current();
      await grid.finishTyping();
      news.clear();
      news.progress(`Saving ${session.name}.`);
      isUnsaved = grid.edited.now;
      const now = await grid.state();
      grid.edited.set(false);
      const isSaved = await this.intoFile(session, now);
      if (isSaved) isUnsaved = false;
      return isSaved;
    } finally {
      if (isUnsaved) grid.edited.set(true);
      this.isWriting = false;
    }
  }

  private async intoFile(session: Session, now: GridState): Promise<boolean> {
    const { news, grid } = this;
    const written = await session.written(now);
    if (isRefused(written)) {
      news.refuse(`${session.name} was not saved. ${written.sentence}`);
      return false;
    }
    download(written.bytes, session.name);
    await session.keep(now, written.arrays);
    // a sheet or a table that the file now has could otherwise be undone, and would stay in the file
    if (addsToFile(written.edits)) grid.forgetHistory();
    this.settle(now);
    news.say(this.savedWords(session.name, written.edits, callsOurs(now)));
    return true;
  }

  /** The file as it would be saved now, for the pane. */
  async bytes(): Promise<Uint8Array | Refusal> {
    const session = await this.current();
    const written = await session.written(await this.grid.state());
    return isRefused(written) ? written : written.bytes;
  }
}

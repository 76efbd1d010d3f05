/** The workbook that is open: its session, what of it must stay as it is, and its bytes. */
import { type FileFacts, noFacts } from "../../host/workbench/file-facts";
import { isRefused, type Refusal } from "../../sheet/refusal";
import type { GridState } from "../file/grid-state";
import type { OpenedFile } from "../file/opened-file";
import type { ReadFile } from "../file/read-file";
import type { Session } from "../file/session";
import { type CellRule, factsOf, fileRules, fixedBy } from "../grid/fixed";
import type { Grid } from "../grid/mount";
import type { Keeper } from "../keeping/keeper";
import type { Page } from "../page";
import { filePart, sampleSession } from "./file-part";
import { affectedIn } from "./held-list";
import { laidOut } from "./laid-out";
import type { News } from "./news";
import { sampleFile } from "./sample-file";

export class OpenWorkbook {
  private units = 0;
  private session: Session | undefined;
  private rules: ReadonlyMap<string, CellRule> = new Map();
  /** The grid and the file do not agree until it is through. */
  private changing: Promise<unknown> | undefined;
  facts: FileFacts = noFacts;

  /** @param sample what the grid held once the example was worked out */
  constructor(
    private readonly grid: Grid,
    private readonly keeper: Keeper,
    private readonly sample: GridState,
    private readonly shown: () => void,
  ) {
    this.settle(sample);
  }

  get name(): string {
    return this.session?.name ?? sampleFile;
  }

  async current(): Promise<Session> {
    const made = this.session ?? (await sampleSession(this.sample, this.grid));
    return (this.session ??= made);
  }

  /** Laid out in place of the one before; undefined where it could not be: that one is there still. */
  async laid(
    file: File,
    { worker, opened }: ReadFile,
    page: Page,
    news: News,
  ): Promise<GridState | undefined> {
    const { Session } = await filePart();
    const { grid } = this;
    const state = await laidOut(file, opened, this.nextUnit(), page, grid, news);
    if (state) {
      this.begin(Session.ofFile(file.name, worker, opened, state, affectedIn(grid)));
      return state;
    }
    worker.close();
    news.refuse(`${file.name} could not be laid out here. The workbook before it is still open.`);
    return undefined;
  }

  /** Another file takes the place of the one before. */
  private begin(session: Session): void {
    this.session?.close();
    this.session = session;
  }

  /** Each showing is a unit of its own to the grid. */
  nextUnit(): number {
    return (this.units += 1);
  }

  /** The grid and the file agree. */
  settle(state: GridState): void {
    this.grid.guard.fixed = fixedBy(state, this.facts, this.rules);
  }

  /** The grid shows this file. */
  shows(opened: OpenedFile, state: GridState): void {
    this.facts = factsOf(opened);
    this.rules = fileRules(opened);
    this.settle(state);
    this.shown();
  }

  /** Nothing is kept or handed on until the work is done. */
  undisturbed<T>(work: () => Promise<T>): Promise<T> {
    return this.keeper.alone(() => {
      const done = work();
      this.changing = done.catch(() => undefined);
      return done;
    });
  }

  /** The file as it would be saved now. */
  async bytes(): Promise<Uint8Array | Refusal> {
    await this.changing;
    const session = await this.current();
    const written = await session.written(await this.grid.state(), "try");
    return isRefused(written) ? written : written.bytes;
  }
}

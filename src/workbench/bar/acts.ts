/**
 * Rows, columns and sheets inserted, deleted, moved and renamed: in the file, which is then shown again
 * where one was. Nothing is changed where the file refuses. The history of the grid begins afresh with it,
 * and its first step takes the act back.
 */
import { isRefused } from "../../sheet/refusal";
import { actWords, byTextWords, lostWords } from "../acts/act-words";
import { viewAfter } from "../acts/view-after";
import type { ActAsked, Coming, Session } from "../file/session";
import type { Grid } from "../grid/mount";
import type { Page } from "../page";
import type { StructuralAct } from "../../xlsx";
import { askWhether } from "./ask";
import { filePart } from "./file-part";
import { affectedIn } from "./held-list";
import { laidOut } from "./laid-out";
import type { News } from "./news";
import type { OneAtATime } from "./one-at-a-time";
import type { OpenWorkbook } from "./open-workbook";

interface Done {
  readonly act: StructuralAct;
  readonly says: string;
}

/** The keyboard goes to where it was: to the sheet where that is nowhere else any more. */
function giveBack(focused: Element | null, page: Page, grid: Grid): void {
  const isElsewhere =
    focused instanceof HTMLElement &&
    focused.isConnected &&
    focused !== document.body &&
    !page.sheet.contains(focused);
  if (isElsewhere) focused.focus();
  else grid.focus();
}

export class Acts {
  private done: readonly Done[] = [];
  private undone: readonly Done[] = [];

  constructor(
    private readonly page: Page,
    private readonly grid: Grid,
    private readonly news: News,
    private readonly workbook: OpenWorkbook,
    one: OneAtATime,
  ) {
    grid.guard.acts = (act) => {
      if (one.isBusy) grid.guard.say("The file is being worked on: try again in a moment.");
      else void one.do(() => this.act(act));
    };
    grid.steps.heard = (where) => {
      if (one.isBusy) return false;
      // when the step is through with the grid's history
      setTimeout(() => void one.do(() => this.go(where)));
      return true;
    };
  }

  private async act(act: StructuralAct): Promise<void> {
    const says = actWords(act, this.grid.cells.names.sheets.length);
    this.news.clear();
    const shown = await this.change({ ask: "act", act }, act);
    if (!shown) return;
    this.done = [...this.done, { act, says }].slice(-shown.counts.back);
    this.undone = [];
    this.news.say(says + byTextWords(act, shown.byText));
    this.news.offer("Undo", () => this.grid.undo());
  }

  private async go(where: "back" | "forth"): Promise<void> {
    const from = where === "back" ? this.done : this.undone;
    const last = from.at(-1);
    this.news.clear();
    const shown = await this.change({ ask: where }, last?.act);
    if (!shown) {
      this.grid.steps.begin({ back: this.done.length, forth: this.undone.length });
      return;
    }
    const moved = last ? [last] : [];
    const others = where === "back" ? this.undone : this.done;
    const both = [from.slice(0, -1), [...others, ...moved]] as const;
    [this.done, this.undone] = where === "back" ? both : [both[1], both[0]];
    const says = last?.says ?? "";
    this.news.say(where === "back" ? `Taken back: ${says}` : `Done again: ${says}`);
  }

  /** What came of it once it is shown; undefined where nothing was changed. */
  private async change(
    asked: ActAsked,
    act: StructuralAct | undefined,
  ): Promise<Coming | undefined> {
    const { news, grid, workbook } = this;
    await grid.finishTyping();
    news.progress("Changing the file.");
    const session = await workbook.current();
    return workbook.undisturbed(async () => {
      const coming = await session.restructured(await grid.state(), asked);
      if (isRefused(coming)) {
        grid.guard.say(`Nothing was changed. ${coming.sentence}`);
        return undefined;
      }
      if (asked.ask === "act" && coming.lost > 0 && !(await this.mayLose(asked.act, coming))) {
        grid.guard.say("");
        return undefined;
      }
      return (await this.show(session, asked, act, coming)) ? coming : undefined;
    });
  }

  private mayLose(act: StructuralAct, { lost }: Coming): Promise<boolean> {
    this.news.clear();
    return askWhether(this.page, lostWords(act, lost));
  }

  private async show(
    session: Session,
    asked: ActAsked,
    act: StructuralAct | undefined,
    coming: Coming,
  ): Promise<boolean> {
    const { page, grid, news, workbook } = this;
    const { opened, before, size, counts } = coming;
    const { carriedHolds, carriedState } = await filePart();
    const view = grid.view();
    const { holding } = grid;
    const isForward = asked.ask === "act" && act !== undefined;
    const again = isForward
      ? { ...carriedHolds(act, opened, holding.now(), holding.differing()), isAll: holding.isAll }
      : undefined;
    const focused = document.activeElement;
    const state = await laidOut(
      { name: session.name, size },
      opened,
      workbook.nextUnit(),
      page,
      grid,
      news,
      {
        again,
        view:
          view &&
          viewAfter(
            view,
            act,
            opened,
            before.sheets.map(({ name }) => name),
          ),
      },
    );
    if (!state) {
      news.refuse("Nothing was changed: the changed file could not be laid out here.");
      return false;
    }
    const agreed = isForward ? carriedState(act, before, state, opened) : state;
    await session.took(opened, agreed, affectedIn(grid));
    workbook.shows(opened, state);
    grid.steps.begin(counts);
    grid.edited.edit();
    giveBack(focused, page, grid);
    return true;
  }
}

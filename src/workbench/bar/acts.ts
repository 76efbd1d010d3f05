/**
 * Rows, columns and sheets inserted, deleted, moved and renamed: in the file, which is then shown again
 * where one was. Nothing is changed where the file refuses. The history of the grid begins afresh with it,
 * and its first step takes the act back.
 */
import { isRefused } from "../../sheet/refusal";
import { actWords, byTextWords, lostWords, stepWords, stillNamedWords } from "../acts/act-words";
import { stillNamed } from "../acts/still-named";
import { viewAfter } from "../acts/view-after";
import type { ActAsked, Coming, Session } from "../file/session";
import type { GridState } from "../file/grid-state";
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

type Wish = Extract<ActAsked, { readonly ask: "act" }> | { readonly ask: "back" | "forth" };

export class Acts {
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
    const shown = await this.change({ ask: "act", act, says });
    if (!shown) return;
    this.news.say(says + byTextWords(act, shown.byText));
    this.news.offer("Undo", () => this.grid.undo());
  }

  private async go(where: "back" | "forth"): Promise<void> {
    this.news.clear();
    const shown = await this.change({ ask: where });
    if (shown) this.news.say(stepWords(where, shown.step));
    else this.grid.steps.begin();
  }

  /** What came of it once it is shown; undefined where nothing was changed. */
  private async change(wish: Wish): Promise<Coming | undefined> {
    const { news, grid, workbook } = this;
    await grid.finishTyping();
    news.progress("Changing the file.");
    const session = await workbook.current();
    return workbook.undisturbed(async () => {
      const now = await grid.state();
      const beyond = wish.ask === "back" ? await grid.steps.beyond(() => grid.state()) : undefined;
      const { isCut } = grid.steps;
      const asked = wish.ask === "act" ? wish : { ...wish, beyond, isCut };
      const coming = await session.restructured(now, asked);
      if (isRefused(coming)) {
        grid.guard.say(`Nothing was changed. ${coming.sentence}`);
        return undefined;
      }
      if (asked.ask === "act" && !(await this.mayLose(asked.act, coming, now))) {
        grid.guard.say("");
        return undefined;
      }
      return (await this.show(session, asked, coming)) ? coming : undefined;
    });
  }

  private async mayLose(act: StructuralAct, { lost }: Coming, now: GridState): Promise<boolean> {
    const named = stillNamed(act, now);
    const words = [
      ...(lost > 0 ? [lostWords(act, lost)] : []),
      ...(named.length > 0 ? [stillNamedWords(named)] : []),
    ];
    if (words.length === 0) return true;
    this.news.clear();
    return askWhether(this.page, words.join(" "));
  }

  private async show(session: Session, asked: Wish, coming: Coming): Promise<boolean> {
    const { page, grid, news, workbook } = this;
    const { opened, before, size, counts, step } = coming;
    const act = "act" in step ? step.act : undefined;
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
    await session.took(opened, agreed, state, affectedIn(grid));
    workbook.shows(opened, state);
    grid.steps.begin(counts);
    grid.edited.edit();
    giveBack(focused, page, grid);
    return true;
  }
}

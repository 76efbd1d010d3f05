/**
 * The page. When this runs the sheet stands there as plain tables already, put there by the build; the
 * pane comes next, and the embedded spreadsheet last, in place of the tables.
 */
import { refused } from "../sheet/refusal";
import "./workbench.css";
import "./plain/plain.css";
import "./bar/bar.css";
import { flushSync } from "react-dom";
import { createRoot } from "react-dom/client";
import { keptHere } from "../taskpane/kept-here";
import { sampleLogbook } from "../workbook/sample/logbook";
import { noFacts } from "../host/workbench/file-facts";
import { announce } from "./announcer";
import { News } from "./bar/news";
import { begunWords } from "./bar/opened-words";
import { makeRoomForNews } from "./bar/news-room";
import { watchFiles } from "./bar/watch-files";
import { LargerPart } from "./larger";
import { moveBetween } from "./move-between";
import { type Page, page } from "./page";
import { firstCell, opensAt } from "./opens-at";
import { placeOf, Selection } from "./selection";
import { Welcome } from "./welcome";
import { WantedTask } from "./wanted-task";
import { WorkbenchPane } from "./workbench-pane";

/** Selecting a cell takes the keyboard into the sheet: not from someone who is already elsewhere. */
function keepFocus(work: () => void): void {
  const focused = document.activeElement;
  work();
  if (focused instanceof HTMLElement && focused !== document.body) focused.focus();
}

async function openGrid(parts: Page, selection: Selection, larger: LargerPart): Promise<void> {
  const { Files, greyButton, letTabComeToButtons, makeReadable, mountGrid, PlainView, ...more } =
    await import(/* webpackChunkName: "grid" */ "./grid/open");
  const book = sampleLogbook();
  const news = new News(parts);
  makeRoomForNews(parts);
  const keeping = more.keepingInPage(kept.forget);
  const found = await keeping.toOpen();
  more.announceKept(parts, found);
  /** Made when there is something to save. */
  const late: { files?: InstanceType<typeof Files> } = {};
  const { grid, state } = await mountGrid(
    parts.grid,
    (isNarrow) => more.snapshotOf(book, { frozenColumns: !isNarrow }),
    selection,
    {
      facts: () => late.files?.facts ?? noFacts,
      bytes: () => late.files?.bytes() ?? Promise.resolve(refused("The sheet is not ready yet.")),
      goneTo: larger.showSheet,
    },
    (sentence) => news.refuse(sentence),
  );
  makeReadable(parts.grid, document.body);
  letTabComeToButtons(parts.grid);
  more.letFingersScroll(parts.grid);
  /** At once: no task of the workbook before is there when the next one is laid out. */
  const paneOf = (workbook: string | undefined) =>
    flushSync(() => pane.render(<WorkbenchPane {...all} host={grid.host} workbook={workbook} />));
  paneOf(undefined);
  const plain = new PlainView(parts, grid.cells, selection);
  const keeper = keeping.keeper(
    {
      edited: grid.edited,
      isTyping: () => grid.isTyping(),
      place: () => placeOf(selection.current()),
      refuse: (sentence) => news.refuse(sentence),
    },
    more.sampleFile,
  );
  const showGrey = greyButton(parts, grid, news);
  const shown = () => {
    plain.show(false);
    showGrey();
  };
  const files = new Files(parts, grid, news, state, shown, keeper);
  late.files = files;
  files.isBetween = (isSo) => paneOf(isSo ? undefined : keeper.drafts);
  files.begun = () => {
    news.say(begunWords);
    wanted.open("bench");
  };
  window.addEventListener("pagehide", () => keeper.remember());
  grid.edited.set(false);
  await more.begin(parts, found, files, keeper, news);
  paneOf(keeper.drafts);
  if (keeper.standing === "untouched") {
    welcome.set({
      look() {
        welcome.set(undefined);
        grid.select(opensAt(book));
        grid.focus();
      },
      begin: () => void files.begin(),
    });
    shown();
    keepFocus(() => grid.select(firstCell(book)));
  }
  grid.onWorked(showGrey);
  grid.edited.watch(() => news.goesOn());
  watchFiles(parts, files, keeper, more.chooser(parts, files, keeper, keeping.shelf, news));
  more.watchTools(parts, grid, news);
  more.offerLists(grid, selection);
  parts.loading.textContent = "";
  parts.undo.addEventListener("click", grid.undo);
  parts.redo.addEventListener("click", grid.redo);
  parts.plainToggle.addEventListener("click", () => plain.toggle());
  const { begin, open, save, undo, redo, plainToggle } = parts;
  for (const each of [begin, open, save, undo, redo, plainToggle]) each.disabled = false;
  moveBetween(parts.sheet, parts.pane, () => {
    larger.showSheet();
    if (plain.isShowing) parts.sheet.focus();
    else grid.focus();
    // an enlarged page scrolls, and the cell that has the focus is drawn, not there
    parts.sheet.scrollIntoView({ block: "nearest" });
  });
}

const parts = page();
const selection = new Selection();
const wanted = new WantedTask();
const welcome = new Welcome(parts.work);
/** The page has the browser's storage for itself. */
const kept = keptHere("", Date.now);
const all = { selection, wanted, welcome, kept };
const pane = createRoot(parts.pane);
pane.render(<WorkbenchPane {...all} />);
announce(selection, parts.announcer);
openGrid(parts, selection, new LargerPart(parts)).catch(() => {
  parts.loading.textContent =
    "The sheet can be read but not edited: the spreadsheet did not start. Load the page again.";
});

/** What the button Sheet opens: what can be done with the selected cells, in groups, for keys and fingers. */
import type { Bench } from "./bench";
import { filter, showAll } from "./filter";
import { find } from "./find";
import { fillDown, lines, numberFormat, underline } from "./format";
import { rowHeight } from "./height";
import { made } from "./made";
import { changeLines } from "./rows";
import { printShown } from "../printing/print-sheet";
import { sort } from "./sort";

interface Item {
  readonly words: string;
  readonly keys?: string;
  does(bench: Bench): void;
}

interface Group {
  readonly title: string;
  readonly items: readonly Item[];
  /** Short words, several in a line. */
  readonly isShort?: boolean;
}

const format = (words: string, pattern: string): Item => ({
  words,
  does: (bench) => numberFormat(bench, pattern),
});

const groups: readonly Group[] = [
  {
    title: "Rows and columns, as many as are selected",
    items: [
      {
        words: "Insert rows above",
        keys: "Ctrl +",
        does: (bench) => changeLines(bench, "rows above"),
      },
      { words: "Insert rows below", does: (bench) => changeLines(bench, "rows below") },
      { words: "Delete rows", keys: "Ctrl \u2212", does: (bench) => changeLines(bench, "no rows") },
      { words: "Insert columns before", does: (bench) => changeLines(bench, "columns before") },
      { words: "Delete columns", does: (bench) => changeLines(bench, "no columns") },
    ],
  },
  {
    title: "Sort by the selected column",
    items: [
      { words: "Smallest first", does: (bench) => sort(bench, "up") },
      { words: "Largest first", does: (bench) => sort(bench, "down") },
    ],
  },
  {
    title: "Filter by the selected column",
    items: [
      { words: "Filter", does: filter },
      { words: "Show all rows", does: showAll },
    ],
  },
  {
    title: "Cells",
    items: [
      { words: "Find", keys: "Ctrl F", does: find },
      { words: "Fill down", keys: "Ctrl D", does: fillDown },
    ],
  },
  {
    title: "Numbers are shown",
    isShort: true,
    items: [
      format("as they are", "General"),
      format("1", "0"),
      format("1.0", "0.0"),
      format("1.00", "0.00"),
      format("1.000", "0.000"),
      format("per cent", "0.0%"),
      format("date", "yyyy-mm-dd"),
      format("text", "@"),
    ],
  },
  {
    title: "Look",
    isShort: true,
    items: [
      { words: "underlined", does: underline },
      { words: "all lines", does: (bench) => lines(bench, "all") },
      { words: "line around", does: (bench) => lines(bench, "around") },
      { words: "no lines", does: (bench) => lines(bench, "none") },
      { words: "row height", does: rowHeight },
    ],
  },
  {
    title: "This sheet",
    items: [
      { words: "Print this sheet", does: ({ grid }) => printShown(grid.cells) },
      // the way to it on a telephone, whose bar has no room for its button
      {
        words: "Text view",
        does: ({ page: { plainToggle } }) => {
          plainToggle.click();
          plainToggle.focus();
        },
      },
    ],
  },
];

function itemButton({ words, keys, does }: Item, done: (does: Item["does"]) => void) {
  const button = made("button", words, ...(keys === undefined ? [] : [made("kbd", keys)]));
  button.type = "button";
  button.role = "menuitem";
  button.tabIndex = -1;
  button.addEventListener("click", () => done(does));
  return button;
}

/** Arrow keys go from one to the next and round again. */
function walk(menu: HTMLElement, event: KeyboardEvent): void {
  const items = [...menu.querySelectorAll<HTMLElement>("[role=menuitem]")];
  const at = items.findIndex((item) => item === document.activeElement);
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: at + 1,
    ArrowRight: at + 1,
    ArrowUp: at < 0 ? -1 : at - 1,
    ArrowLeft: at < 0 ? -1 : at - 1,
    Home: 0,
    End: -1,
  };
  const to = steps[event.key];
  if (to === undefined) return;
  event.preventDefault();
  items.at(to % items.length)?.focus();
}

export class Menu {
  private readonly menu = made("div");

  constructor(private readonly bench: Bench) {
    const { menu } = this;
    menu.className = "tools-menu";
    menu.role = "menu";
    menu.popover = "auto";
    menu.ariaLabel = "With the selected cells";
    for (const { title, items, isShort } of groups) {
      const group = made("div", "", made("p", title));
      group.role = "group";
      group.ariaLabel = title;
      if (isShort) group.className = "tools-short";
      group.append(...items.map((item) => itemButton(item, (does) => this.choose(does))));
      menu.append(group);
    }
    menu.addEventListener("keydown", (event) => {
      event.stopPropagation();
      walk(menu, event);
    });
    menu.addEventListener("toggle", () => {
      const isOpen = menu.matches(":popover-open");
      bench.page.tools.setAttribute("aria-expanded", String(isOpen));
    });
    bench.page.tools.after(menu);
  }

  private choose(does: Item["does"]): void {
    this.menu.hidePopover();
    void this.bench.grid.finishTyping().then(() => {
      this.bench.grid.focus();
      does(this.bench);
    });
  }

  /** Open it under its button, or close it. */
  toggle(): void {
    const { menu } = this;
    if (menu.matches(":popover-open")) {
      menu.hidePopover();
      return;
    }
    const { left, bottom } = this.bench.page.tools.getBoundingClientRect();
    menu.showPopover();
    const room = document.documentElement.clientWidth - menu.offsetWidth - 6;
    menu.style.left = `${String(Math.max(6, Math.min(left, room)))}px`;
    menu.style.top = `${String(bottom + 4)}px`;
    menu.style.maxHeight = `calc(100dvh - ${String(bottom + 12)}px)`;
    menu.querySelector<HTMLElement>("[role=menuitem]")?.focus();
  }
}

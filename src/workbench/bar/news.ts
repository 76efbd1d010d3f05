/** The strip under the bar: what happened to the file, what was refused, how far a long work has got. */
import type { Page } from "../page";

type Kind = "none" | "news" | "refusal" | "progress";

/** Milliseconds after which one is told that something is going on. */
const soonEnough = 500;

/** Milliseconds in which a few sentences are read without haste. */
const readIn = 15_000;

export interface Part {
  readonly says: string;
  readonly items: readonly string[];
}

export class News {
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** How far the work has got, shown or not. */
  private latest = "";
  private saidAt = 0;
  /** Another for whatever is shown. */
  turn = 0;

  constructor(private readonly page: Pick<Page, "news" | "newsWords" | "newsClose" | "open">) {
    page.newsClose.addEventListener("click", () => {
      this.clear();
      // the button that had the keyboard goes with the strip
      page.open.focus();
    });
  }

  private show(kind: Kind, words: readonly Node[]): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.page.newsWords.replaceChildren(...words);
    this.saidAt = Date.now();
    this.turn += 1;
    this.page.news.dataset.kind = kind;
  }

  /** @param parts to be read at leisure, each under a line of its own */
  say(sentence: string, ...parts: readonly Part[]): void {
    this.show("news", [
      line(sentence),
      ...parts.flatMap(({ says, items }) => [
        line(says),
        ...(items.length > 0 ? [list(items)] : []),
      ]),
    ]);
  }

  /** Beside what is said now: something to do about it. */
  offer(words: string, pressed: () => void): void {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = words;
    button.addEventListener("click", pressed);
    this.page.newsWords.append(button);
  }

  refuse(sentence: string): void {
    this.show("refusal", [line(sentence)]);
  }

  /**
   * Shown when the work is still going on half a second after it was first spoken of.
   * @param isLong known to take longer: shown at once, since the page may be too busy to do so later
   */
  progress(sentence: string, isLong = false): void {
    this.latest = sentence;
    if (isLong || this.page.news.dataset.kind === "progress") {
      this.show("progress", [line(sentence)]);
      return;
    }
    this.timer ??= setTimeout(() => this.show("progress", [line(this.latest)]), soonEnough);
  }

  clear(): void {
    this.show("none", []);
  }

  /** Somebody goes on with the work: what was merely said, and could be read, goes. */
  goesOn(): void {
    const hasButton = this.page.newsWords.querySelector("button") !== null;
    const isRead = Date.now() - this.saidAt > readIn;
    if (this.page.news.dataset.kind === "news" && isRead && !hasButton) this.clear();
  }
}

function line(sentence: string): HTMLElement {
  const made = document.createElement("p");
  made.textContent = sentence;
  return made;
}

function list(items: readonly string[]): HTMLElement {
  const made = document.createElement("ul");
  for (const item of items) {
    const each = document.createElement("li");
    each.textContent = item;
    made.append(each);
  }
  return made;
}

/**
 * What is pressed may take itself away: "Show all 10 lots", "Stop", "These are right". The browser then
 * drops the focus, and who works by keyboard or ear would begin again at the top. It goes to what now
 * follows the place where they were.
 */
import { type RefObject, useEffect, useRef } from "react";

const focusable =
  "a[href], button:not(:disabled), input:not(:disabled), select, textarea, summary, [tabindex]";

/** Drawn, and not inside a part that is shut. */
export const isShown = (element: Element): boolean =>
  element.getClientRects().length > 0 &&
  !element.matches("details:not([open]) > :not(summary), details:not([open]) > :not(summary) *");

/** In the order of the page. */
const allIn = (root: HTMLElement): HTMLElement[] =>
  [...root.querySelectorAll<HTMLElement>(focusable)].filter(isShown);

const isDropped = (): boolean => document.activeElement === document.body;

/** What follows the place of an element that is gone. */
function follower(root: HTMLElement, before: readonly HTMLElement[]): HTMLElement | undefined {
  const now = allIn(root);
  const last = before.filter((each) => now.includes(each)).at(-1);
  const at = last === undefined ? 0 : now.indexOf(last) + 1;
  return now[at] ?? last;
}

/** Keeps the focus inside an element when what had it is taken away or hidden. */
class Keeper {
  private focused: Element | undefined;
  /** What stood before it, when it was last used. */
  private before: readonly HTMLElement[] = [];

  constructor(private readonly root: HTMLElement) {}

  readonly note = (): void => {
    const { activeElement } = document;
    if (!(activeElement instanceof HTMLElement) || !this.root.contains(activeElement)) return;
    const all = allIn(this.root);
    this.focused = activeElement;
    this.before = all.slice(0, all.indexOf(activeElement));
  };

  /** It went elsewhere; or nowhere, though what had it is still there: somebody pressed beside it. */
  readonly left = ({ relatedTarget }: FocusEvent): void => {
    const left = this.focused;
    if (relatedTarget !== null) this.focused = undefined;
    // what is about to be taken away is still there now
    else
      setTimeout(() => {
        if (this.focused === left && isDropped() && left && isShown(left)) this.focused = undefined;
      });
  };

  readonly mend = (): void => {
    if (!this.focused || !isDropped() || isShown(this.focused)) return;
    this.focused = undefined;
    follower(this.root, this.before)?.focus();
  };
}

const noted = ["focusin", "keydown", "click"] as const;

export function useKeptFocus<Root extends HTMLElement>(): RefObject<Root> {
  const held = useRef<Root>(null);
  useEffect(() => {
    const root = held.current;
    if (!root) return undefined;
    const keeper = new Keeper(root);
    const observer = new MutationObserver(keeper.mend);
    observer.observe(root, { childList: true, subtree: true, attributeFilter: ["hidden", "open"] });
    for (const kind of noted) root.addEventListener(kind, keeper.note, { capture: true });
    root.addEventListener("focusout", keeper.left);
    return () => {
      observer.disconnect();
      for (const kind of noted) root.removeEventListener(kind, keeper.note, { capture: true });
      root.removeEventListener("focusout", keeper.left);
    };
  }, []);
  return held;
}

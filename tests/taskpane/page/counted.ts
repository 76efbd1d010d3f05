/** A hand at the keyboard or the glass that counts: every key but the signs that go into a field, each tap. */
import type { Page } from "playwright-core";

interface Stops {
  readonly names: readonly string[];
  /** -1: before all of them. */
  readonly at: number;
}

/** What the Tab key stops at, in order, and how many of them lie before the focus. */
function stops(): Stops {
  const all = [
    ...document.querySelectorAll<HTMLInputElement>("a, button, input, select, textarea, summary"),
  ].filter((each) => each.tabIndex >= 0 && !each.matches(":disabled") && each.checkVisibility());
  const isPassed = (each: HTMLInputElement): boolean => {
    if (each.type !== "radio") return false;
    const group = all.filter(({ type, name }) => type === "radio" && name === each.name);
    return each !== (group.find(({ checked }) => checked) ?? group[0]);
  };
  const shown = all.filter((each) => !isPassed(each));
  const here = document.activeElement ?? document.body;
  const name = (each: HTMLInputElement): string =>
    (each.getAttribute("aria-label") ?? each.labels?.[0]?.textContent ?? each.textContent).trim();
  const before = shown.filter(
    (each) => each.compareDocumentPosition(here) & Node.DOCUMENT_POSITION_FOLLOWING,
  ).length;
  const place = shown.indexOf(here as HTMLInputElement);
  return { names: shown.map(name), at: place >= 0 ? place : before - 0.5 };
}

export class CountedHand {
  presses = 0;
  signs = 0;
  constructor(readonly page: Page) {}

  async press(key: string): Promise<void> {
    this.presses += 1;
    await this.page.keyboard.press(key);
  }

  async type(text: string): Promise<void> {
    this.signs += text.length;
    await this.page.keyboard.type(text);
  }

  /** By Tab or Shift+Tab, whichever is nearer. */
  async to(name: string | RegExp): Promise<void> {
    const fits = (found: string): boolean =>
      typeof name === "string" ? found === name || found.startsWith(`${name}, `) : name.test(found);
    const { names, at } = await this.page.evaluate(stops);
    const ways = names.flatMap((each, place) => (fits(each) ? [place - at] : []));
    const [way] = ways.sort((a, b) => Math.abs(a) - Math.abs(b));
    if (way === undefined)
      throw new Error(`nothing is called ${String(name)}: ${names.join(" | ")}`);
    for (let steps = Math.ceil(Math.abs(way)); steps > 0; steps -= 1)
      await this.press(way > 0 ? "Tab" : "Shift+Tab");
    const there = await this.heard();
    if (!fits(there)) throw new Error(`it was ${String(name)}, and the focus is on ${there}`);
  }

  /** A finger on a button or a box, whichever is called so. */
  async tap(name: string | RegExp): Promise<void> {
    this.presses += 1;
    const button = this.page.getByRole("button", { name, exact: true });
    await button.or(this.page.getByRole("checkbox", { name })).first().tap();
  }

  /** What has the focus, as it is called. */
  async heard(): Promise<string> {
    return this.page.evaluate(() => {
      const at = document.activeElement as HTMLInputElement | null;
      return (
        at?.getAttribute("aria-label") ??
        at?.labels?.[0]?.textContent ??
        at?.textContent ??
        ""
      ).trim();
    });
  }

  /** Waits, without a press, until the focus is there. */
  async isOn(name: string | RegExp): Promise<void> {
    for (let tries = 0; tries < 100; tries += 1) {
      const there = await this.heard();
      const fits =
        typeof name === "string"
          ? there === name || there.startsWith(`${name}, `)
          : name.test(there);
      if (fits) return;
      await this.page.waitForTimeout(50);
    }
    throw new Error(`the focus is on ${await this.heard()}, not on ${String(name)}`);
  }
}

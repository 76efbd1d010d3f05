/** A person at the bench who uses the keyboard alone. */
import type { Locator, Page } from "playwright-core";

interface Stop {
  readonly name: string;
  readonly tag: string;
  readonly value: string;
}

/** What has the focus, and what the Tab key should come to after it, each as a listener would hear it. */
function stopsAhead(go?: number): Stop[] {
  const heard = (at: Element | null): Stop => {
    if (!(at instanceof HTMLElement)) return { name: "", tag: "", value: "" };
    const field = at as HTMLInputElement;
    const label = field.labels?.[0]?.textContent ?? "";
    const name = at.getAttribute("aria-label") ?? (label === "" ? at.textContent : label);
    const value = "value" in field ? String(field.value) : "";
    return { name: name.trim(), tag: at.tagName.toLowerCase(), value };
  };
  const here = document.activeElement ?? document.body;
  const fields = [
    ...document.querySelectorAll<HTMLInputElement>("a, button, input, select, textarea, summary"),
  ];
  // a group of radios is one stop: the one that is picked, or the first
  const isPassed = (field: HTMLInputElement): boolean => {
    if (field.type !== "radio") return false;
    const group = fields.filter(({ type, name }) => type === "radio" && name === field.name);
    return field !== (group.find(({ checked }) => checked) ?? group[0]);
  };
  const isAfter = (field: Element) =>
    here.compareDocumentPosition(field) & Node.DOCUMENT_POSITION_FOLLOWING;
  const ahead = fields.filter(
    (field) =>
      isAfter(field) &&
      field.tabIndex >= 0 &&
      !field.disabled &&
      field.checkVisibility() &&
      !isPassed(field),
  );
  const stops = [here, ...ahead];
  if (go !== undefined) (stops[go] as HTMLElement).focus();
  return stops.map(heard);
}

const isCalled =
  (name: string | RegExp) =>
  (found: string): boolean =>
    typeof name === "string"
      ? found === name || found.startsWith(`${name}, `) || found.startsWith(`${name}:`)
      : name.test(found);

export class BenchHand {
  constructor(readonly page: Page) {}

  private async focused(): Promise<Stop> {
    const [focused] = await this.page.evaluate(stopsAhead, undefined);
    return focused ?? { name: "", tag: "", value: "" };
  }

  /** The name of what has the focus. */
  async hears(): Promise<string> {
    return (await this.focused()).name;
  }

  /** Tabs on, round the page if need be, until the focus is on what is called so. */
  async tabTo(name: string | RegExp, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
    const fits = isCalled(name);
    if (key === "Tab") await this.skip(fits);
    for (let steps = 0; steps < 90; steps += 1) {
      if (fits((await this.focused()).name)) return;
      await this.page.keyboard.press(key);
    }
    throw new Error(`the Tab key never comes to ${String(name)}`);
  }

  /** Tabs through what lies between without a look at each; where it was miscounted, tabTo goes on looking. */
  private async skip(fits: (found: string) => boolean): Promise<void> {
    const ahead = await this.page.evaluate(stopsAhead, undefined);
    const far = ahead.findIndex(({ name }) => fits(name));
    for (let presses = 0; presses < far; presses += 1) await this.page.keyboard.press("Tab");
  }

  async press(name: string | RegExp, key: "Enter" | "Space" = "Enter"): Promise<void> {
    await this.tabTo(name);
    await this.page.keyboard.press(key);
  }

  async type(name: string, text: string): Promise<void> {
    await this.tabTo(name);
    await this.page.keyboard.press("Control+A");
    if (text === "") await this.page.keyboard.press("Delete");
    else await this.page.keyboard.type(text);
  }

  /** Chooses in a list by typing the beginning of the word. */
  async choose(name: string, word: string): Promise<void> {
    await this.tabTo(name);
    const { tag } = await this.focused();
    if (tag !== "select") throw new Error(`${name} is no list`);
    const isChosen = () =>
      this.page.evaluate((begins) => {
        const list = document.activeElement as HTMLSelectElement;
        const [chosen] = list.selectedOptions;
        return chosen?.value !== "" && chosen?.text.toLowerCase().startsWith(begins) === true;
      }, word.toLowerCase());
    for (let tries = 0; tries < 3; tries += 1) {
      await this.page.keyboard.type(word);
      if (await isChosen()) return;
      // letters typed within a second still belong to the word before
      await this.page.waitForTimeout(1100);
    }
    throw new Error(`${name} took no ${word}`);
  }

  protected radio(name: string, of?: string): Locator {
    const within =
      of === undefined ? this.page : this.page.getByRole("radiogroup", { name: of, exact: true });
    return within.getByRole("radio", { name, exact: true });
  }

  /**
   * Moves a group of radios on from where it stands; the group is one stop of the Tab key.
   * @param of the group's own name, where several have such a radio
   */
  async pick(name: string, of?: string): Promise<void> {
    const radio = this.radio(name, of);
    const group = radio.locator("xpath=ancestor::*[@role='radiogroup']");
    const isThere = () => group.evaluate((element) => element.contains(document.activeElement));
    for (let steps = 0; steps < 90 && !(await isThere()); steps += 1) {
      await this.page.keyboard.press("Tab");
    }
    await this.page.keyboard.press("Space");
    for (let steps = 0; steps < 10 && !(await radio.isChecked()); steps += 1) {
      await this.page.keyboard.press("ArrowRight");
    }
    if (!(await radio.isChecked())) throw new Error(`${name} cannot be picked by keyboard`);
  }

  async next(step: string): Promise<void> {
    await this.press(`Next: ${step}`);
    await this.page.getByRole("heading", { level: 2, name: new RegExp(step) }).waitFor();
  }
}

/**
 * The same person where only the screens are wanted: what the Tab key would come to has the focus at once.
 * That the key comes to it, the tests that go by keyboard alone show.
 */
export class QuickHand extends BenchHand {
  override async tabTo(name: string | RegExp, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
    const from = async (): Promise<number> =>
      (await this.page.evaluate(stopsAhead, undefined)).findIndex((stop) =>
        isCalled(name)(stop.name),
      );
    let far = key === "Tab" ? await from() : -1;
    if (far < 0) {
      await this.page.evaluate(() => (document.activeElement as HTMLElement).blur());
      far = await from();
    }
    if (far < 0) await super.tabTo(name, key);
    else if (far > 0) await this.page.evaluate(stopsAhead, far);
  }

  override async pick(name: string, of?: string): Promise<void> {
    const radio = this.radio(name, of);
    await radio.focus();
    await this.page.keyboard.press("Space");
    if (!(await radio.isChecked())) throw new Error(`${name} cannot be picked by keyboard`);
  }
}

export interface Slip {
  readonly lot: string;
  readonly titres: readonly string[];
  readonly blanks: readonly string[] | "neutralised";
  readonly mass?: string;
  readonly ownMasses?: readonly string[];
}

export async function fillTitrant(hand: BenchHand): Promise<void> {
  await hand.choose("How do you know its strength?", "Checked");
  await hand.type("KHP weighed", "0.5105");
  await hand.type("Corrected titre", "25.05");
  await hand.type("Accurate to ±", "0.5");
  await hand.type("Smallest burette mark", "0.05");
}

export async function fillOil(hand: BenchHand, slip: Slip): Promise<void> {
  await hand.type("Lot", slip.lot);
  if (slip.ownMasses) await hand.pick("Weighed each time");
  else await hand.type("Oil weighed", slip.mass ?? "10.02");
  await hand.type("Smallest balance step", "0.01");
}

export async function fillBlank(hand: BenchHand, slip: Slip): Promise<void> {
  if (slip.blanks === "neutralised") {
    await hand.pick("Solvent neutralised");
    return;
  }
  await hand.pick("Titrated");
  await hand.tabTo("Volume used");
  for (const blank of slip.blanks) {
    await hand.page.keyboard.type(blank);
    await hand.page.keyboard.press("Enter");
  }
}

/** From the first step to the last titre. */
export async function fillSlip(hand: BenchHand, slip: Slip): Promise<void> {
  // begun after another it opens at its oil
  if (!(await hand.page.getByLabel("How do you know its strength?").isVisible()))
    await hand.press(/^1 Titrant/);
  await fillTitrant(hand);
  await hand.next("Oil");
  await fillOil(hand, slip);
  await hand.next("Blank");
  await fillBlank(hand, slip);
  await hand.next("Replicates");
  await fillTitres(hand, slip);
}

export async function fillTitres(hand: BenchHand, slip: Slip): Promise<void> {
  await hand.tabTo("Volume used");
  for (const [index, titre] of slip.titres.entries()) {
    await hand.page.keyboard.type(titre);
    const own = slip.ownMasses?.[index];
    if (own !== undefined) {
      await hand.page.keyboard.press("Tab");
      await hand.page.keyboard.type(own);
    }
    await hand.page.keyboard.press("Enter");
  }
}

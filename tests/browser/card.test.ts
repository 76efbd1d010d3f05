/** The bench card in Chromium: by keyboard alone, with ticks that outlive the page. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { QuickHand } from "../taskpane/page/bench";
import { cardQuery, cardScenes } from "../taskpane/page/card-scenes";
import { faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";
import { bookOf, undo } from "./host-in-page";

describe.runIf(hasBrowser)("the bench card in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("shows what its row holds in the person's units, and a reload keeps ticks and what was weighed", async () => {
    const first = await chromium.open({}, cardQuery);
    const hand = new QuickHand(first.page);
    await first.page.getByRole("combobox", { name: "Batch" }).waitFor();
    await hand.choose("Batch", "B-117");
    await first.page.getByText("B-117: no acid value yet, so no dose.").waitFor();
    await hand.choose("Batch", "B-114");
    // 25 imperial gallons as typed; by hand 25 x 4.54609 x 0.915 = 103.992 kg = 229 lb 4.2 oz
    await first.page.getByText("25.00 imperial gal").waitFor();
    await first.page.getByText("229 lb 4.2 oz, 104.0 kg").waitFor();
    // on paper the same, and one undo takes it back
    const before = await bookOf(first.page);
    await hand.press("Make a sheet to print");
    expect(await hand.hears()).toBe("Make a sheet to print");
    await first.page.getByRole("button", { name: "Make this sheet" }).waitFor();
    await hand.press("Make this sheet");
    await first.page.getByText("Written in the sheet Card B-114").waitFor();
    const printed = (await bookOf(first.page)).sheets.find(({ name }) => name === "Card B-114");
    expect(printed?.print).toMatchObject({ landscape: false, block: { row: 0, columns: 5 } });
    await undo(first.page);
    expect(await bookOf(first.page)).toEqual(before);
    await hand.press(/^1\. Drain/, "Space");
    await hand.type("Methanol: what you put in", "5.9");
    await hand.type("Number of washes", "4");
    // the row holds three washes, and those go only once that is agreed to
    await first.page
      .getByText(/The logbook says 3 washes\. Replace it with 4\?/)
      .first()
      .waitFor();
    await first.page.getByText("The logbook says 28.9 L of methanol.").waitFor();
    await hand.press("Replace 28.9 L", "Space");
    await hand.press("Replace 3 washes", "Space");
    await hand.press("Record how it went");
    await first.page.getByText(/Written in row 6 of the sheet Batches/).waitFor();
    // other units: what was typed in gallons is said in litres, 5.9 x 4.54609, and comes back as typed
    const really = first.page.getByLabel("Methanol: what you put in");
    await first.page.getByLabel("Units").selectOption("metric");
    await expect.poll(() => really.inputValue()).toBe("26.82");
    await first.page.getByLabel("Units").selectOption("imperial");
    await expect.poll(() => really.inputValue()).toBe("5.9");
    const again = await chromium.openIn(first.page.context(), cardQuery);
    const step = again.page.getByRole("checkbox", { name: /^1\. Drain/ });
    await step.waitFor();
    expect(await step.isChecked()).toBe(true);
    expect(await again.page.getByRole("checkbox", { name: /^2\. Heat/ }).isChecked()).toBe(false);
    expect(await again.page.getByLabel("Methanol: what you put in").inputValue()).toBe("5.9");
    expect([...first.complaints, ...again.complaints]).toEqual([]);
    await first.page.context().close();
  });

  it("has on paper a place to tick for each thing the trial may show", async () => {
    const { page } = await chromium.open({}, cardQuery);
    const hand = new QuickHand(page);
    await page.getByRole("combobox", { name: "Batch" }).waitFor();
    await hand.choose("Batch", "B-114");
    await page.emulateMedia({ media: "print" });
    for (const name of ["clear", "cloudy", "oil at the bottom"])
      await page.getByRole("radio", { name }).locator("xpath=..").waitFor({ state: "visible" });
    await page.context().close();
  });

  rarely(
    "has no accessibility fault on any screen, fits and can be touched, in every look",
    async () => {
      expect(await faultsOnTheWay(chromium, cardQuery, cardScenes)).toEqual([]);
    },
  );
});

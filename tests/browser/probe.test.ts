/** A probe in Titrate, in Chromium: sixteen readings pasted, the end point taken over, a sheet of its own. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { QuickHand } from "../taskpane/page/bench";
import { faultsInEveryLook } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { harveyPasted } from "../taskpane/page/probe-readings";
import { hasBrowser } from "./browser";
import { bookOf, undo } from "./host-in-page";

describe.runIf(hasBrowser)("a probe in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("finds the end point of dark oil, keeps what was pasted, and makes a sheet that one undo takes back", async () => {
    const looks = { viewport: { width: 320, height: 700 }, reducedMotion: "reduce" } as const;
    const first = await chromium.open(looks, "task=titrate&book=sample");
    const hand = new QuickHand(first.page);
    await first.page.getByRole("heading", { level: 2 }).waitFor();
    await hand.press(/^4 Replicates/);
    await first.page.getByLabel("Start and end").click();
    await hand.press("A probe for dark oil");
    await hand.tabTo("Readings of the probe");
    await first.page.keyboard.insertText(harveyPasted);
    await first.page
      .getByText(/End point 15\.67 mL\. It lies on the step from 15\.6 to 15\.7 mL/)
      .waitFor();
    await first.page.getByText(/known no better than ± 0\.05 mL/).waitFor();
    await first.page.getByText("The line with 0 is left out: 0 counts as empty.").waitFor();
    expect(await faultsInEveryLook(first.page)).toEqual([]);
    // the same out of a file: chosen at the press of a button, it takes the place of what stood there
    await hand.tabTo("Readings of the probe");
    await first.page.keyboard.press("Control+A");
    await first.page.keyboard.insertText("1 7");
    const [chooser] = await Promise.all([
      first.page.waitForEvent("filechooser"),
      hand.press("From a CSV file"),
    ]);
    await chooser.setFiles({
      name: "probe.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(`mL;pH\r\n${harveyPasted.replaceAll("\t", ";")}\r\n`),
    });
    await first.page.getByText(/End point 15\.67 mL\./).waitFor();
    await hand.press("Put 15.67 mL into Volume used");
    expect(await first.page.getByLabel("Volume used").inputValue()).toBe("15.67");
    // Enter would add it
    await expect.poll(() => hand.hears()).toMatch(/^Volume used/);
    const before = await bookOf(first.page);
    await hand.press("Put these readings on a sheet");
    await first.page.getByRole("button", { name: "Make this sheet" }).waitFor();
    await hand.press("Make this sheet");
    await first.page.getByText("Undo takes the sheet back.").waitFor();
    const made = (await bookOf(first.page)).sheets.find(({ name }) => name === "Probe");
    expect(made?.cells["1,1"]?.formula).toBe("=TITRE.ENDPOINT(A5:A19,B5:B19)");
    expect(made?.cells["18,0"]?.value).toBe(24);
    await undo(first.page);
    expect((await bookOf(first.page)).sheets.map(({ name }) => name)).toEqual(
      before.sheets.map(({ name }) => name),
    );
    await first.page.waitForTimeout(600);
    const context = first.page.context();
    // two tabs of one draft hold each other off
    await first.page.close();
    const again = await chromium.openIn(context, "task=titrate&book=sample");
    const other = new QuickHand(again.page);
    await again.page.getByRole("button", { name: /^Go on with/ }).waitFor();
    await other.press(/^Go on with/);
    await again.page.getByRole("button", { name: "A probe for dark oil" }).waitFor();
    await other.press("A probe for dark oil");
    expect(
      await again.page.getByRole("textbox", { name: "Readings of the probe" }).inputValue(),
    ).toContain("15.7;9.29");
    // the probe gave one volume; the next lot is read as this person reads
    await other.press("Earlier titrations");
    await other.press("New titration");
    await other.press(/^4 Replicates/);
    const isOwn = () => again.page.getByLabel("Start and end").isChecked();
    await expect.poll(isOwn).toBe(true);
    expect([...first.complaints, ...again.complaints]).toEqual([]);
    await context.close();
  });

  it("asks about a reading that jumps up and back, and is no titre twice", async () => {
    const looks = { viewport: { width: 320, height: 700 }, reducedMotion: "reduce" } as const;
    const { page, complaints } = await chromium.open(looks, "task=titrate&book=sample");
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    await hand.press(/^4 Replicates/);
    await hand.press("A probe for dark oil");
    await hand.tabTo("Readings of the probe");
    await page.keyboard.insertText(harveyPasted.replace("12\t6.15", "12\t11.9"));
    await page
      .getByText("Line 5: is 11.9 at 12 mL right? Before it stands 5.89, after it 6.63.")
      .waitFor();
    expect(await page.getByText(/End point/).count()).toBe(0);
    expect(await faultsInEveryLook(page)).toEqual([]);
    await hand.press("Leave out line 5");
    await page.getByText(/End point 15\.67 mL\./).waitFor();
    await page.getByRole("button", { name: "Take line 5 in again" }).waitFor();
    await hand.press("Put 15.67 mL into Volume used");
    await expect.poll(() => hand.hears()).toMatch(/^Volume used/);
    await page.keyboard.press("Enter");
    await page.getByText(/This curve is titre 1 already/).waitFor();
    expect(await page.getByRole("button", { name: /^Put 15/ }).count()).toBe(0);
    expect(await faultsInEveryLook(page)).toEqual([]);
    await hand.press("Begin a fresh curve");
    const box = page.getByRole("textbox", { name: "Readings of the probe" });
    await expect.poll(() => box.inputValue()).toBe("");
    await hand.press("Bring back the last curve");
    await expect.poll(() => box.inputValue()).toContain("11.9 left out");
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});

/**
 * The titration task in Chromium: by keyboard alone from an empty workbook to a recorded row, and what every
 * screen must hold.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand, fillSlip, QuickHand, type Slip } from "../taskpane/page/bench";
import { faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { scenes } from "../taskpane/page/scenes";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";
import { bookOf, lastRow, undo, type PaneWindow } from "./host-in-page";

async function toResult(hand: BenchHand, slip: Slip): Promise<void> {
  await hand.page.getByRole("heading", { level: 2 }).waitFor();
  await fillSlip(hand, slip);
}

async function toRecorded(hand: BenchHand): Promise<void> {
  await hand.next("Result");
  await hand.next("Record");
  await hand.page.getByRole("button", { name: "Record this titration" }).waitFor();
  await hand.press("Record this titration");
  await hand.page.getByText(/Written in row/).waitFor();
}

const three: Slip = { lot: "NQ-44", titres: ["2.40", "2.50", "2.45"], blanks: ["0.15"] };

describe.runIf(hasBrowser)("the titration task in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("goes by keyboard alone from an empty workbook to a row, and undo takes it back whole", async () => {
    const { page, complaints } = await chromium.open();
    const hand = new BenchHand(page);
    const before = await bookOf(page);
    await toResult(hand, three);
    expect(await bookOf(page)).toEqual(before);
    await toRecorded(hand);

    expect(await lastRow(page, "Titrations")).toMatchObject({
      Lot: "NQ-44",
      "Titrant base": "KOH",
      "Strength set by": "KHP",
      "Titre 1 mL": 2.4,
      "Titre 2 mL": 2.5,
      "Titre 3 mL": 2.45,
      "Blank 1 mL": 0.15,
      "Mass g": 10.02,
      "Read to mL": 0.05,
      "FFA %": expect.stringMatching(/^=IF\(COUNTA\(.*TITRE\.FFAFROMACIDVALUE/) as string,
    });
    await undo(page);
    const after = await bookOf(page);
    expect(after.tables).toEqual([]);
    expect(after.sheets.map(({ name }) => name)).toEqual(before.sheets.map(({ name }) => name));
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  rarely(
    "does so with five titres on their own masses, one suspect omitted, and a second blank",
    async () => {
      const { page, complaints } = await chromium.open();
      const hand = new QuickHand(page);
      await toResult(hand, {
        lot: "SW-20",
        titres: ["2,40", "2.45", "2.40", "3.60", "2.45"],
        ownMasses: ["10.02", "10.10", "9.95", "10.00", "10.05"],
        blanks: ["0.15", "0.10"],
      });
      await page.getByText("Suspect", { exact: true }).waitFor();
      await hand.press("Leave out Titre 4");
      await hand.press("Leave out titre 4");
      await page.getByText("A reason is needed").waitFor();
      await hand.choose("Why leave out titre 4?", "air");
      await hand.press("Leave out titre 4");
      await page.getByText("Omitted: air bubble").waitFor();
      await toRecorded(hand);

      const recorded = await lastRow(page, "Titrations");
      expect(recorded).toMatchObject({
        "Titre 3 mL": 2.4,
        "Titre 5 mL": 2.45,
        "Blank 2 mL": 0.1,
        "Own mass 1 g": 10.02,
        "Own mass 5 g": 10.05,
        Omitted: "Titre 4 = 3.60 mL: air bubble",
      });
      for (const heading of ["Titre 4 mL", "Own mass 4 g", "Mass g"]) {
        expect(recorded[heading] ?? "").toBe("");
      }
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  rarely("puts an omitted titre back, and undoes the omission", async () => {
    const { page } = await chromium.open();
    const hand = new QuickHand(page);
    await toResult(hand, three);
    const omit = async (): Promise<void> => {
      await hand.press("Leave out Titre 2");
      await hand.choose("Why leave out titre 2?", "spilt");
      await hand.press("Leave out titre 2");
      await page.getByText("Omitted: spilt").waitFor();
    };
    await omit();
    expect(await hand.hears()).toBe("Put back Titre 2");
    await hand.press("Put back Titre 2");
    expect(await hand.hears()).toBe("Leave out Titre 2");
    expect(await page.getByText("Omitted: spilt").count()).toBe(0);
    await omit();
    await hand.press("Put titre 2 back");
    expect(await page.getByText("Omitted: spilt").count()).toBe(0);
    await page.context().close();
  });

  it("has no accessibility fault on any screen, fits and can be touched, in every look", async () => {
    expect(await faultsOnTheWay(chromium, "", scenes)).toEqual([]);
  });

  it("shows where the focus is, at every stop of the Tab key", async () => {
    const { page } = await chromium.open();
    await page.getByRole("heading", { level: 2 }).waitFor();
    const unseen: string[] = [];
    for (let stops = 0; stops < 16; stops += 1) {
      await page.keyboard.press("Tab");
      const lacking = await page.evaluate(() => {
        const at = document.activeElement;
        if (!at || at === document.body) return "";
        for (let each: Element | null = at; each; each = each.parentElement) {
          const { outlineStyle, outlineWidth } = getComputedStyle(each);
          if (outlineStyle !== "none" && parseFloat(outlineWidth) >= 2) return "";
        }
        return at.outerHTML;
      });
      if (lacking !== "") unseen.push(lacking);
    }
    expect(unseen).toEqual([]);
    await page.context().close();
  });

  it("goes on by Enter with nothing typed, once a blank and three titres are there, and not before", async () => {
    const { page } = await chromium.open();
    const hand = new BenchHand(page);
    const isAt = (step: string) => page.getByRole("heading", { level: 2, name: step }).waitFor();
    await toResult(hand, { ...three, titres: ["2.40", "2.50"] });
    // pressed once too often: the third titre is still to come
    await page.keyboard.press("Enter");
    await page.getByText("Fill in Volume used.").waitFor();
    await page.keyboard.type("2.45");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Add titre 4" }).click();
    await page.getByText("Fill in Volume used.").waitFor();
    await hand.tabTo("Volume used", "Shift+Tab");
    await page.keyboard.press("Enter");
    await isAt("Result");
    await hand.press("Back");
    await hand.press("Back");
    await isAt("Blank");
    await hand.tabTo("Volume used");
    await page.keyboard.press("Enter");
    await isAt("Replicates");
  });

  rarely(
    "leaves the focus alone when it opens, and takes it to each step that is gone to",
    async () => {
      const { page } = await chromium.open();
      const hand = new BenchHand(page);
      await page.getByRole("heading", { level: 2 }).waitFor();
      expect(await page.evaluate(() => document.activeElement === document.body)).toBe(true);
      await hand.next("Oil");
      // to what is typed there first; the step is said aloud
      expect(await hand.hears()).toBe("Lot");
      await page.getByRole("status").filter({ hasText: "Oil 2 of 6" }).waitFor();
      // Enter does not pass over an empty lot, and says so
      await page.keyboard.press("Enter");
      await page.getByText("Fill in Lot: a row needs it.").waitFor();
      expect(await hand.hears()).toBe("Lot");
      await page.keyboard.type("NQ-44");
      // Enter moves to the next field that wants something, and from the last of them to the next step
      await page.keyboard.press("Enter");
      expect(await hand.hears()).toBe("Oil weighed, g");
      await page.keyboard.press("Enter");
      expect(await hand.hears()).toBe("Smallest balance step, g");
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { level: 2, name: /Blank/ }).waitFor();
      expect(await hand.hears()).toBe("Volume used, mL");
      await hand.press("Earlier titrations");
      await page.getByRole("heading", { level: 2, name: "Earlier titrations" }).waitFor();
      expect(await hand.hears()).toBe("Earlier titrations");
      await page.context().close();
    },
  );

  it("answers which 0.1 is meant by keyboard, and goes back to the figure", async () => {
    const { page } = await chromium.open();
    const hand = new BenchHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    await hand.type("Strength", "0.1");
    // however often Enter is pressed, it stays at the question and answers nothing
    for (let presses = 0; presses < 3; presses += 1) await page.keyboard.press("Enter");
    expect(await hand.hears()).toMatch(/^Which 0.1 is it/);
    // nor does the button pass it unseen; it stands right under the box it is about
    await hand.press(/^Next: /);
    expect(await hand.hears()).toMatch(/^Which 0.1 is it/);
    const [box, question, other] = await Promise.all(
      [
        page.getByLabel("Strength, mol/L"),
        page.locator(".question"),
        page.getByLabel(/^Accurate to/),
      ].map(async (each) => (await each.boundingBox())?.y ?? 0),
    );
    expect(question).toBeGreaterThan(box ?? 0);
    expect(other).toBeGreaterThan(question ?? 0);
    await hand.press(/^0.1 %: 1 g in a litre/);
    await page.getByLabel("Strength, % w/v").waitFor();
    await page.waitForFunction(() => document.activeElement?.tagName === "INPUT");
    expect(await hand.hears()).toBe("Strength, % w/v");
    expect(await page.getByLabel("Strength, % w/v").inputValue()).toBe("0.1");
    await page.context().close();
  });

  it("brings the hand from Record to an empty lot by one press, and says there what is wanted", async () => {
    const { page } = await chromium.open();
    const hand = new BenchHand(page);
    await toResult(hand, { ...three, lot: "" });
    // Enter with nothing typed: the lot is no part of this step, and the result needs none
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { level: 2, name: /Result/ }).waitFor();
    await page.keyboard.press("Enter");
    await expect.poll(() => hand.hears()).toBe("Go to Oil");
    await page.keyboard.press("Enter");
    await expect.poll(() => hand.hears()).toBe("Lot");
    await page.getByText("Fill in Lot: a row needs it.").waitFor();
    await page.keyboard.type("NQ-44");
    expect(await page.getByText("Fill in Lot: a row needs it.").count()).toBe(0);
    await page.context().close();
  });

  it("does not pass over a reading that it asks about, nor answer for the person", async () => {
    const { page } = await chromium.open();
    const hand = new BenchHand(page);
    await toResult(hand, three);
    await hand.press("A probe for dark oil");
    // by hand: pH 8.9 at 1.0 mL jumps up and back between 5.2 and 5.6
    const curve = "0.5 5.2\n1.0 8.9\n1.5 5.6\n2.0 6.3\n2.4 8.6\n2.8 10.4\n3.2 11.0\n3.6 11.2";
    await page.getByLabel("Readings of the probe").fill(curve);
    await page.getByRole("button", { name: "Keep line 2" }).waitFor();
    await hand.tabTo("Volume used", "Shift+Tab");
    for (let presses = 0; presses < 3; presses += 1) await page.keyboard.press("Enter");
    expect(await hand.hears()).toMatch(/^Line 2: is 8.9 at 1.0 mL right/);
    expect(await page.getByRole("button", { name: "Keep line 2" }).count()).toBe(1);
    await hand.press("Leave out line 2");
    await hand.tabTo("Volume used", "Shift+Tab");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { level: 2, name: /Result/ }).waitFor();
    await page.context().close();
  });

  it("says what is wrong at once, and leaves the focus where it is", async () => {
    const { page } = await chromium.open();
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    await hand.type("Strength", "5.6");
    await page.getByText(/Strength is 5.6 mol\/L; allowed is/).waitFor({ timeout: 500 });
    expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-invalid"))).toBe(
      "true",
    );
    await hand.type("Strength", "1,234");
    await page.getByText(/can be read as 1.234 or as 1234/).waitFor({ timeout: 500 });
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe(
      "1,234",
    );
    await page.context().close();
  });

  rarely(
    "speaks of figures with a comma where that is usual, and takes a point as well",
    async () => {
      const { page } = await chromium.open({}, "locale=de-DE");
      const hand = new QuickHand(page);
      await toResult(hand, { ...three, titres: ["2,40", "2.50", "2,45"], mass: "10,02" });
      await page.getByText("2,450 mL").first().waitFor();
      await hand.next("Result");
      await page.getByText("2,300 mL").waitFor();
      await page.context().close();
    },
  );

  it("keeps what was typed through a reload, and lists the lots under way", async () => {
    const { page } = await chromium.open();
    const hand = new QuickHand(page);
    await toResult(hand, three);
    await hand.type("Volume used", "2.5");
    await page.waitForTimeout(1000);
    await page.reload();
    await page.getByRole("heading", { level: 2, name: "Earlier titrations" }).waitFor();
    await hand.press("Go on with NQ-44");
    await page.getByRole("heading", { level: 2, name: /Replicates/ }).waitFor();
    expect(await page.getByLabel("Volume used").inputValue()).toBe("2.5");
    await page.getByText("Titre 3", { exact: true }).waitFor();

    await hand.press("Earlier titrations");
    await hand.press("New titration");
    await page.getByRole("heading", { level: 2, name: /Titrant/ }).waitFor();
    expect(await page.getByLabel("KHP weighed").inputValue()).toBe("0.5105");
    await hand.next("Oil");
    await hand.type("Lot", "TW-10");
    await hand.press("Earlier titrations");
    await page.getByRole("button", { name: "Go on with TW-10" }).waitFor();
    await page.getByRole("button", { name: "Go on with NQ-44" }).waitFor();
    await hand.press("Discard NQ-44");
    await hand.press("Discard NQ-44 for good");
    await page.getByRole("button", { name: "Go on with NQ-44" }).waitFor({ state: "detached" });
    await page.context().close();
  });

  it("loses nothing when the page dies in the middle of a reading", async () => {
    const { page } = await chromium.open();
    const hand = new QuickHand(page);
    await toResult(hand, three);
    const context = page.context();
    // what is promised: kept within a second
    await page.waitForTimeout(1000);
    await page.close({ runBeforeUnload: false });
    const { page: again } = await chromium.openIn(context);
    await again.getByRole("button", { name: "Go on with NQ-44" }).waitFor();
    await again.getByText(/three titres|3 titres/).waitFor();
    await context.close();
  });

  it("records a lot named like a formula or a tag as text, and shows it as text", async () => {
    for (const lot of ["=1+1", "<b>bold</b>"]) {
      const { page, complaints } = await chromium.open();
      const hand = new QuickHand(page);
      await toResult(hand, { ...three, lot });
      expect(await page.locator(".task-of").textContent()).toBe(lot);
      expect(await page.locator("b").count()).toBe(0);
      await toRecorded(hand);
      expect((await lastRow(page, "Titrations")).Lot).toBe(lot);
      expect(complaints).toEqual([]);
      await page.context().close();
    }
  });

  rarely(
    "runs the end-point timer, which the space bar pauses even in a number field",
    async () => {
      const { page } = await chromium.open();
      const hand = new BenchHand(page);
      await toResult(hand, { ...three, titres: [] });
      await hand.press(/^30 s/);
      await page.getByText("30 seconds running. Space pauses.").waitFor();
      await hand.type("Volume used", "2.4");
      await page.keyboard.press("Space");
      await page.getByText(/^Paused with \d+ seconds left\.$/).waitFor();
      expect(await page.getByLabel("Volume used").inputValue()).toBe("2.4");
      await page.keyboard.press("Space");
      await page.getByText("30 seconds running. Space pauses.").waitFor();
      expect(await page.getByText("30 seconds running").getAttribute("role")).toBe("status");

      await page.evaluate(() => {
        document.body.append(document.createElement("textarea"));
      });
      await page.locator("body > textarea").focus();
      await page.keyboard.type("a b");
      expect(await page.locator("body > textarea").inputValue()).toBe("a b");
      expect(await page.getByText("30 seconds running").count()).toBe(1);
      await page.context().close();
    },
  );

  it("loses nothing when the workbook refuses, says why, and records once it may", async () => {
    const { page } = await chromium.open();
    const hand = new QuickHand(page);
    await toResult(hand, three);
    await page.evaluate(() => {
      const { host } = (window as unknown as PaneWindow).titrebook;
      host.interference = ({ verb, moment }) =>
        verb === "write" && moment === 3
          ? { kind: "fault", code: "being-edited", about: "Titrations" }
          : undefined;
    });
    await hand.next("Result");
    await hand.next("Record");
    await page.getByRole("button", { name: "Record this titration" }).waitFor();
    await hand.press("Record this titration");
    await hand.tabTo("Look again");
    expect((await bookOf(page)).tables).toEqual([]);
    await page.evaluate(() => {
      (window as unknown as PaneWindow).titrebook.host.interference = () => undefined;
    });
    await hand.press("Look again");
    await page.getByRole("button", { name: "Record this titration" }).waitFor();
    await hand.press("Record this titration");
    await page.getByText(/Written in row/).waitFor();
    expect((await lastRow(page, "Titrations")).Lot).toBe("NQ-44");
    await page.context().close();
  });
});

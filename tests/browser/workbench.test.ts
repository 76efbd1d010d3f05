import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { hasBrowser, type OpenPage, type Served, serve } from "./browser";
import { at, goTo, gridIsReady, openSheet, paneSays, typeInto } from "./workbench-page";

describe.runIf(hasBrowser)("the workbench in a browser", () => {
  let served: Served;
  let opened: OpenPage;

  // one page for all of them, in their order: a spreadsheet takes longer to start than to use
  beforeAll(async () => {
    served = await serve();
    opened = await served.open();
    await opened.page.goto(served.address);
    await gridIsReady(opened.page);
  });
  afterAll(() => served.close());
  // Every test ends here: no error on the console, no request to any other host.
  afterEach(() => {
    expect(opened.complaints).toEqual([]);
  });

  it("shows a newcomer the example at a dose, and explains it", async () => {
    const { page } = opened;
    await paneSays(page, `Batches ${at("Batches", "Catalyst g", 1)}`);
    await paneSays(page, "909");
    await paneSays(page, "CATALYST");
  });

  it("changes the dose of a batch when a titre of its lot changes", async () => {
    const { page } = opened;
    await openSheet(page, "Titrations");
    const titre = at("Titrations", "Titre 1 mL", 1);
    await typeInto(page, titre, "2.55");
    await openSheet(page, "Batches");
    const dose = at("Batches", "Catalyst g", 1);
    await goTo(page, dose);
    // By hand: mean titre 2.5, less 0.15 = 2.35 mL; x 0.0998 x 56.1 / 10 g = 1.315713 mg KOH/g;
    // (91.5 x 1.315713 / 56.1 x 56.1053 + 10 x 91.5 x 0.765) / 0.90 = 911.53 g.
    await paneSays(page, /^912$/);
    // 0.95 mL from two that agree: no dose of that
    await openSheet(page, "Titrations");
    await typeInto(page, titre, "3.4");
    await openSheet(page, "Batches");
    await goTo(page, dose);
    await paneSays(page, "Not yet: see Acid value worth");
  });

  it("shows #VALUE! for text in place of a titre, says why, and goes on elsewhere", async () => {
    const { page } = opened;
    await openSheet(page, "Titrations");
    await typeInto(page, at("Titrations", "Titre 1 mL", 1), "lots");
    await goTo(page, at("Titrations", "Corrected titre mL", 1));
    await paneSays(page, /^#VALUE!$/);
    await paneSays(page, /"lots" is not one/);
    await typeInto(page, at("Titrations", "Titre 1 mL", 2), "4.95");
    await goTo(page, at("Titrations", "Corrected titre mL", 2));
    // By hand: (4.95 + 4.90 + 4.85) / 3 - 0.15 = 4.75.
    await paneSays(page, /^4\.75/);
  });

  it("takes an edit back, shows what was taken back, and does it again", async () => {
    const { page } = opened;
    await openSheet(page, "Batches");
    await typeInto(page, at("Batches", "Amount", 1), "200");
    await goTo(page, at("Batches", "Oil kg", 1));
    // By hand: 200 L x 0.915 = 183 kg.
    await paneSays(page, /^183\.00$/);
    await page.click("#undo");
    await page
      .locator("#announcer")
      .getByText(`Batches ${at("Batches", "Amount", 1)}. 100.0.`)
      .waitFor();
    await page.click("#redo");
    await page
      .locator("#announcer")
      .getByText(`Batches ${at("Batches", "Amount", 1)}. 200.0.`)
      .waitFor();
  });

  it("lists every function after =TITRE. is typed", async () => {
    const { page } = opened;
    await goTo(page, "B30");
    await page.keyboard.type("=TITRE.", { delay: 40 });
    // The list is drawn after the last key, and a name may stand in the pane before it: so it is asked until it is whole.
    const listed = async () =>
      (await page.locator("body").innerText())
        .split("\n")
        .filter((line) => line.startsWith("TITRE."));
    await expect
      .poll(listed, { timeout: 20_000 })
      .toEqual(catalogue.map(({ id }) => `TITRE.${id}`));
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  });

  it("computes a formula that is typed, and explains it", async () => {
    const { page } = opened;
    await typeInto(page, "B30", "=TITRE.CORRECTED({2.4,2.5,2.45},0.15)");
    await goTo(page, "B30");
    await paneSays(page, /^2\.3$/);
    await paneSays(page, "CORRECTED");
  });

  it("moves between sheet and pane with F6, and says the selected cell in a live region", async () => {
    const { page } = opened;
    await goTo(page, at("Batches", "Catalyst g", 5));
    const isInPane = () => page.evaluate(() => document.activeElement?.id === "pane");
    await page.keyboard.press("F6");
    expect(await isInPane()).toBe(true);
    await page.keyboard.press("F6");
    expect(await isInPane()).toBe(false);
    await page.keyboard.press("ArrowUp");
    await page
      .locator("#announcer")
      .getByText(`Batches ${at("Batches", "Catalyst g", 4)}`)
      .waitFor();
    await page.keyboard.press("ArrowDown");
    await page
      .locator("#announcer")
      .getByText(/above the limit of 5 %/)
      .waitFor();
  });

  it("shows what the grid holds now as plain tables", async () => {
    const { page } = opened;
    await typeInto(page, at("Batches", "Amount", 1), "300");
    await page.click("#plain-toggle");
    const row = page.locator("#plain tr", { hasText: "B-112" });
    // By hand: 300 L x 0.915 = 274.5 kg.
    await row.getByText("274.50").waitFor();
    await page.click("#plain-toggle");
    await gridIsReady(page);
  });
});

describe.runIf(hasBrowser)("before the grid", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("shows every computed value in a plain table, without any script", async () => {
    const { page, complaints } = await served.open({ javaScriptEnabled: false });
    await page.goto(served.address);
    const row = page.locator("#plain tr", { hasText: "B-112" });
    await row.getByText("909", { exact: true }).waitFor();
    expect(await page.locator("#plain tr", { hasText: "B-116" }).innerText()).toContain("#VALUE!");
    expect(complaints).toEqual([]);
  });

  it("stays readable, and says so, when the spreadsheet cannot start", async () => {
    const { page } = await served.open();
    await page.route(/workbench\.grid\.js\b/, (route) => route.abort());
    await page.goto(served.address);
    await page.getByText(/can be read but not edited/).waitFor();
    expect(await page.locator("#plain").isVisible()).toBe(true);
  });
});

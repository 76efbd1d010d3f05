/** My bench in Chromium, kept while a titration is under way: what was typed stays, its gaps are filled. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { faultsInEveryLook } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { hasBrowser } from "./browser";

describe.runIf(hasBrowser)("My bench in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("fills the gaps of a titration under way, says which, and leaves what was typed", async () => {
    const looks = { viewport: { width: 320, height: 700 }, reducedMotion: "reduce" } as const;
    const { page, complaints } = await chromium.open(looks, "task=pane");
    const button = (name: string) => page.getByRole("button", { name, exact: true });
    await button("Titrate").click();
    const strength = page.getByRole("textbox", { name: /^Strength/ });
    await strength.fill("0.0998");
    await button("My bench").click();
    await page.getByLabel("Titrant strength").fill("0.1");
    await page.getByLabel("Burette step").fill("0.05");
    await page.getByLabel("Balance step").fill("0.01");
    await button("Keep for good in the workbook").click();
    await page.getByText(/It fills empty boxes only\./).waitFor();
    await button("Titrate").click();
    const filled = page.locator(".say", { hasText: "Filled in from My bench" });
    await expect
      .poll(() => filled.textContent())
      .toMatch(/Smallest burette mark 0\.05 mL, Smallest balance step 0\.01 g\.$/);
    expect(await strength.inputValue()).toBe("0.0998");
    await page.getByText(/My bench says/).waitFor({ state: "attached" });
    expect(await faultsInEveryLook(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});

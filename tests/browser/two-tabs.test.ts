/** Two tabs on one draft: the second says so and reads until it takes over; nothing typed is lost. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { screenFaults } from "../taskpane/page/checks";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";

const reads = "This is open in another tab or window";
const lost = "This was taken over in another tab or window";

const takeOver = (page: Page) => page.getByRole("button", { name: "Take over here" });

describe.runIf(hasBrowser)("a second tab on one draft", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  const lot = (page: Page) => page.getByLabel("Lot", { exact: true });

  /** A titration begun, at the oil. */
  const begun = async () => {
    const { page } = await chromium.open();
    await page.getByRole("button", { name: /Oil/ }).first().click();
    await lot(page).fill("NQ-44");
    await page.keyboard.press("Enter");
    return page;
  };
  const second = async (page: Page) => {
    const other = (await chromium.openIn(page.context())).page;
    const goOn = other.getByRole("button", { name: "Go on with NQ-44" });
    // what was typed is kept at the next pause: a page that was quicker looks again
    await expect
      .poll(
        async () => {
          const isOffered = () => goOn.waitFor({ timeout: 2_000 }).then(() => true);
          return isOffered().catch(() => other.reload().then(() => false));
        },
        { timeout: 30_000 },
      )
      .toBe(true);
    await goOn.click();
    await other.getByText(reads).waitFor();
    return other;
  };

  it("reads it, says so, and takes nothing that is typed", async () => {
    const first = await begun();
    const other = await second(first);
    expect(await other.locator("fieldset.held input:enabled").count()).toBe(0);
    expect(await first.getByText(reads).count()).toBe(0);
    expect(await takeOver(first).count()).toBe(0);
    expect(await screenFaults(other, 340)).toEqual([]);
    await first.context().close();
  });

  it("takes over with what was typed last in the first, which says so and reads on", async () => {
    const first = await begun();
    const other = await second(first);
    await first.getByRole("button", { name: /Oil/ }).first().click();
    await lot(first).fill("NQ-45");
    await takeOver(other).click();
    await first.getByText(lost).waitFor();
    await other.getByText(reads).waitFor({ state: "detached" });
    await other.getByRole("button", { name: /Oil/ }).first().click();
    expect(await lot(other).inputValue()).toBe("NQ-45");
    expect(await lot(first).isDisabled()).toBe(true);
    expect(await lot(first).inputValue()).toBe("NQ-45");
    // and back again, with what was typed in the other meanwhile
    await lot(other).fill("NQ-46");
    await takeOver(first).click();
    await other.getByText(lost).waitFor();
    await first.getByRole("button", { name: /Oil/ }).first().click();
    expect(await lot(first).inputValue()).toBe("NQ-46");
    await first.context().close();
  });

  rarely("goes on by itself when the first is closed", async () => {
    const first = await begun();
    const other = await second(first);
    await first.close();
    await other.getByText(reads).waitFor({ state: "detached" });
    await other.getByRole("button", { name: /Oil/ }).first().click();
    expect(await lot(other).isDisabled()).toBe(false);
    await other.context().close();
  });

  rarely("writes as ever in a browser that has no locks", async () => {
    const { page } = await chromium.open();
    const context = page.context();
    await context.addInitScript(() => {
      Object.defineProperty(navigator, "locks", { value: undefined });
    });
    const alone = (await chromium.openIn(context)).page;
    await alone.getByRole("button", { name: /Oil/ }).first().click();
    await lot(alone).fill("NQ-47");
    expect(await takeOver(alone).count()).toBe(0);
    expect(await lot(alone).inputValue()).toBe("NQ-47");
    await context.close();
  });

  it("is one for each lot, and one for the batch", async () => {
    const { page } = await chromium.open({}, "task=batch&book=sample");
    await page.getByRole("heading", { level: 2 }).waitFor();
    const other = (await chromium.openIn(page.context(), "task=batch&book=sample")).page;
    await other.getByText(reads).waitFor();
    await takeOver(other).click();
    await page.getByText(lost).waitFor();
    const titrating = (await chromium.openIn(page.context())).page;
    await titrating.getByRole("heading", { level: 2 }).waitFor();
    expect(await takeOver(titrating).count()).toBe(0);
    await page.context().close();
  });
});

import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser, type Served, serve } from "./browser";
import { gridIsReady } from "./workbench-page";

interface Fault {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}

describe.runIf(hasBrowser)("the page around the grid", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  /** The grid itself is drawn on a canvas; what stands in for it is checked with the rest. */
  const faults = async (page: Page) => {
    await page.addScriptTag({ content: axe.source });
    return page.evaluate(async () => {
      const { violations } = await (
        window as unknown as { axe: { run(about: object): Promise<{ violations: Fault[] }> } }
      ).axe.run({ exclude: ["#grid"] });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
    });
  };

  it.each([1400, 900, 320])("has no fault that axe can find at %i pixels", async (width) => {
    const { page } = await served.open({ viewport: { width, height: 700 } });
    await page.goto(served.address);
    await gridIsReady(page);
    expect(await faults(page)).toEqual([]);
    await page.click("#plain-toggle");
    await page.locator("#plain table").first().waitFor();
    expect(await faults(page)).toEqual([]);
  });

  it.each([1400, 900, 320])("fits into %i pixels without scrolling sideways", async (width) => {
    const { page } = await served.open({ viewport: { width, height: 700 } });
    await page.goto(served.address);
    await gridIsReady(page);
    const widest = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(widest).toBeLessThanOrEqual(width);
  });
});

/** Every time a page's own policy refused something, in words. Asked for before the page opens. */
import type { Page } from "playwright-core";

export async function watchPolicy(page: Page): Promise<() => Promise<string[]>> {
  await page.addInitScript(() => {
    const seen: string[] = [];
    Object.assign(window, { refusals: seen });
    document.addEventListener("securitypolicyviolation", (event) => {
      seen.push(`${event.effectiveDirective} refused ${event.blockedURI} in ${event.sourceFile}`);
    });
  });
  return () => page.evaluate(() => (window as unknown as { refusals: string[] }).refusals);
}

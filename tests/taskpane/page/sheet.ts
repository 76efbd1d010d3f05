/** Many pictures on one sheet, each with its name, drawn by the browser itself. */
import type { Browser, BrowserContext } from "playwright-core";

export interface Shot {
  readonly name: string;
  readonly png: Buffer;
}

const figure = ({ name, png }: Shot): string =>
  `<figure><figcaption>${name}</figcaption><img src="data:image/png;base64,${png.toString("base64")}"></figure>`;

/** @param path where the contact sheet is written */
export async function contactSheet(
  browser: Browser | BrowserContext,
  shots: readonly Shot[],
  path: string,
): Promise<void> {
  const page = await browser.newPage();
  await page.setViewportSize({ width: 2200, height: 1000 });
  await page.setContent(
    `<style>body{margin:12px;background:#777;font:14px system-ui;display:flex;flex-wrap:wrap;gap:12px;align-items:start}
     figure{margin:0}figcaption{color:#fff;padding:2px 0}</style>${shots.map(figure).join("")}`,
  );
  await page.screenshot({ path, fullPage: true });
  await page.close();
}

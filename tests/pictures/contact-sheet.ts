/** Many pictures on one sheet, each with its name, drawn by the browser itself. */
import type { BrowserContext } from "playwright-core";

export interface Shot {
  readonly name: string;
  readonly png: Buffer;
}

export interface SheetSize {
  /** Of each picture, in pixels; a taller one is cut. */
  readonly width: number;
  readonly tallest: number;
  readonly perRow: number;
}

const gap = 12;

const figure = ({ name, png }: Shot): string =>
  `<figure><figcaption>${name}</figcaption><div><img src="data:image/png;base64,${png.toString("base64")}"></div></figure>`;

/** @param path where the contact sheet is written */
export async function contactSheet(
  context: BrowserContext,
  shots: readonly Shot[],
  { width, tallest, perRow }: SheetSize,
  path: string,
): Promise<void> {
  const page = await context.newPage();
  await page.setViewportSize({ width: perRow * (width + gap) + gap, height: 600 });
  await page.setContent(
    `<style>body{margin:${gap}px;background:#777;font:14px system-ui;display:grid;gap:${gap}px;
     grid-template-columns:repeat(${perRow},${width}px);align-items:start}
     figure{margin:0}figcaption{color:#fff;padding:2px 0}div{max-height:${tallest}px;overflow:hidden}
     img{display:block;width:100%}</style>${shots.map(figure).join("")}`,
  );
  await page.screenshot({ path, fullPage: true });
  await page.close();
}

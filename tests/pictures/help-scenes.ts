/** The help pages: the contents, a guide, a function, the mistakes in figures, a search. */
import type { Page } from "playwright-core";
import type { Look } from "../taskpane/page/scenes";

const pages = [
  "index",
  "first-titration",
  "uncertainty",
  "dose",
  "mistakes",
  "glossary",
  "cautions",
];

export async function helpScenes(page: Page, look: Look): Promise<void> {
  for (const name of pages) {
    await page.goto(new URL(`${name}.html`, page.url()).href);
    await look(`help, ${name}`);
  }
  await page.goto(new URL("search.html", page.url()).href);
  await page.getByRole("searchbox").fill("blank");
  await page.getByRole("listitem").first().waitFor();
  await look("help, a search");
}

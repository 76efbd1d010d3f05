/** The built workbench with each task open, a file opened, and what it refuses. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { at, chooserOf, goTo, gridIsReady, openSheet, typeInto } from "../browser/workbench-page";
import type { Look } from "../taskpane/page/scenes";

const untidy = fileURLToPath(new URL("../../sample-workbooks/old-logbook.xlsx", import.meta.url));

async function chooseFile(page: Page): Promise<void> {
  const chooser = await chooserOf(page);
  await chooser.setFiles({
    name: "old-logbook.xlsx",
    mimeType: "application/octet-stream",
    buffer: readFileSync(untidy),
  });
}

export async function workbenchScenes(page: Page, look: Look): Promise<void> {
  await page.waitForSelector("#plain table");
  await look("to be read, before the grid");
  await gridIsReady(page);
  await page.waitForSelector("#save:enabled", { timeout: 60_000 });
  await openSheet(page, "Batches");
  // past it and back: then the whole of its column is in view
  await goTo(page, at("Batches", "± catalyst g", 1));
  await goTo(page, at("Batches", "Catalyst g", 1));
  await look("a dose explained");
  await openSheet(page, "Titrations");
  const titre = at("Titrations", "Titre 1 mL", 1);
  await typeInto(page, titre, "two");
  await goTo(page, at("Titrations", "Corrected titre mL", 1));
  await look("a wrong entry explained");
  const tasks = page.getByRole("navigation", { name: "Tasks" }).getByRole("button");
  for (const name of (await tasks.allTextContents()).slice(1)) {
    await tasks.getByText(name, { exact: true }).click();
    await page.locator("#pane :is(h2, h3):visible").first().waitFor();
    await look(`the task ${name}`);
  }
  const alone = page.locator("#larger");
  if (await alone.isVisible()) {
    await alone.click();
    await look("the pane alone");
    await alone.click();
  }
  await chooseFile(page);
  await page.locator("#news-words").getByText("is open.").waitFor({ timeout: 60_000 });
  await look("another workbook opened");
  await page.click("#open");
  await page.locator("#kept[open]").waitFor();
  await look("what the browser kept");
  await page.keyboard.press("Escape");
  // on a telephone it is in the menu
  await page.locator("#plain-toggle").dispatchEvent("click");
  await look("its plain tables");
}

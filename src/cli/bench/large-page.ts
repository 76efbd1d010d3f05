/**
 * A file of 10,000 rows and 20 columns, four of them formulas, opened in the built workbench: how long
 * it takes, how much work that is for the page, and the longest piece of it in one go, in which the page
 * answers nobody. Work is told as processor time: what else the machine does leaves that as it is.
 */
import type { Browser, Page } from "playwright-core";
import { gridIsThere, withBuiltPage } from "./built-page";
import { type Measure, told } from "./figure";
import { fileOf } from "./large-file";
import { line, rows } from "./large-rows";

interface Opening {
  readonly seconds: number;
  readonly work: number;
  readonly longest: number;
}

interface Task {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Milliseconds of processor time of each task of the page's own thread. */
function tasksIn(trace: Buffer): number[] {
  const { traceEvents } = JSON.parse(trace.toString("utf8")) as { traceEvents: Task[] };
  const mains = traceEvents.filter(
    ({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain",
  );
  return traceEvents
    .filter(({ name }) => name.endsWith("RunTask"))
    .filter(({ pid, tid }) => mains.some((main) => main.pid === pid && main.tid === tid))
    .map(({ tdur = 0 }) => tdur / 1000);
}

async function opening(browser: Browser, page: Page, buffer: Buffer): Promise<Opening> {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.click("#open")]);
  await browser.startTracing(page, { categories: ["toplevel", "__metadata"] });
  const start = Date.now();
  await chooser.setFiles({ name: "large.xlsx", mimeType: "application/octet-stream", buffer });
  await page.waitForFunction(
    () => document.querySelector("#news-words")?.textContent.includes("large.xlsx is open"),
    undefined,
    { timeout: 120_000 },
  );
  const seconds = (Date.now() - start) / 1000;
  const tasks = tasksIn(await browser.stopTracing());
  const work = tasks.reduce((sum, each) => sum + each, 0);
  return { seconds, work, longest: Math.max(...tasks) };
}

/** The first opening of a page, as most are; the smallest of some. */
async function quietOpening(browser: Browser, address: string): Promise<Opening> {
  const buffer = Buffer.from(fileOf(Array.from({ length: rows }, (_, at) => line(at + 1))));
  const openings: Opening[] = [];
  for (let time = 0; time < 3; time += 1) {
    const page = await (await browser.newContext()).newPage();
    await page.goto(address);
    await gridIsThere(page);
    openings.push(await opening(browser, page, buffer));
    await page.context().close();
  }
  const least = (of: keyof Opening) => Math.min(...openings.map((each) => each[of]));
  return { seconds: least("seconds"), work: least("work"), longest: least("longest") };
}

async function run(build: string) {
  const quiet = await withBuiltPage(build, quietOpening);
  if (!quiet) return [];
  const what = "10,000 x 20 cells with 40,000 formulas opened in the page";
  return [
    told(what, quiet.seconds, "s", 1),
    told(`${what}: its work`, quiet.work, "ms of processor", 0),
    told(`${what}: the longest piece of work`, quiet.longest, "ms of processor", 0),
  ];
}

export const largePage: Measure = { name: "large file in the page", isOfBuild: true, run };

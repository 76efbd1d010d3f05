/** One Chromium for all the suites of a worker, whose pages share nothing: a context each. */
import type { Browser, BrowserContext, BrowserContextOptions } from "playwright-core";
import { launchChromium } from "../../src/cli/chromium";

let running: Promise<Browser> | undefined;

/** Machine code made for the long run is never paid back by a page of a few seconds. */
const forShortPages = ["--js-flags=--no-maglev --no-turbofan"];

/** The contexts of one suite, closed together. The browser ends with the worker. */
export interface Contexts {
  newContext(options?: BrowserContextOptions): Promise<BrowserContext>;
  close(): Promise<void>;
}

/** An open page draws on, and takes time from all others: one that a test opened is closed with it. */
async function closeWithTest(context: BrowserContext): Promise<void> {
  if (process.env.VITEST === undefined) return;
  const { onTestFinished, TestRunner } = await import("vitest");
  if (TestRunner.getCurrentTest<undefined>()) onTestFinished(() => context.close());
}

export async function contextsOfChromium(): Promise<Contexts> {
  const browser = await (running ??= launchChromium(forShortPages));
  const opened: BrowserContext[] = [];
  return {
    async newContext(options) {
      const context = await browser.newContext(options);
      opened.push(context);
      await closeWithTest(context);
      return context;
    },
    close: async () => {
      await Promise.all(opened.map((context) => context.close()));
    },
  };
}

/** For a command, which has no worker that ends. */
export async function endBrowser(): Promise<void> {
  await (await running)?.close();
}

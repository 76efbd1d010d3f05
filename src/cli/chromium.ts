/** Debian's Chromium without a window, and without a call to anybody: this network answers none. */
import { type Browser, chromium } from "playwright-core";

export const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";

export const launchChromium = (): Promise<Browser> =>
  chromium.launch({
    executablePath,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });

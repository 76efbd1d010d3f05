/**
 * Debian's Chromium without a window, and without a call to anybody: this network answers none. Its shell,
 * which never has a window, draws and runs the same pages and opens one for a quarter of the work.
 */
import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const [shell, whole] = ["/usr/bin/chromium-headless-shell", "/usr/bin/chromium"] as const;

export const executablePath = process.env.CHROMIUM ?? (existsSync(shell) ? shell : whole);

/** @param more further words for its command line */
export const launchChromium = (more: readonly string[] = []): Promise<Browser> =>
  chromium.launch({
    executablePath,
    args: [
      "--no-sandbox",
      // without a window nobody can answer which file to write into: saved files are downloads
      "--disable-blink-features=FileSystemAccessLocal",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      ...more,
    ],
  });

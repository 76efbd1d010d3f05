/**
 * The spreadsheet program's own runtime files, from the package of their maker, in a real browser with
 * our built files. What is missing is the program itself: a stand-in for it hands over calls and
 * takes results, in the messages that the runtime reads and writes.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { root } from "../rules/sources-of";
import type { Contexts } from "./shared-browser";

const office = join(root, "node_modules/@microsoft/office-js/dist");
const dist = join(root, "dist");
export const address = "http://localhost/";
export const runtimeAddress = "https://appsforoffice.microsoft.com/lib/1/hosted/";

const kinds: Record<string, string> = { html: "text/html", js: "text/javascript", css: "text/css" };

/** The page of functions alone: bridge, runtime, functions, as a runtime without a pane has it. */
const functionsPage = `<!doctype html><meta charset="utf-8"><script>
window.sent = [];
window._richApiNativeBridge = {
  sendMessageToHost(text) {
    const { id, message } = JSON.parse(text);
    sent.push(message.body);
    const answer = { id, type: 2, message: { statusCode: 200, headers: {}, body: '{"Results":[]}' } };
    setTimeout(() => this.onMessageFromHost(JSON.stringify(answer)), 0);
  },
};
</script><script src="${runtimeAddress}custom-functions-runtime.js"></script><script src="functions.js"></script>`;

function fileAt(url: string): Buffer | string | undefined {
  if (url === `${address}functions.html`) return functionsPage;
  const [from, folder] = url.startsWith(address) ? [address, dist] : [runtimeAddress, office];
  if (!url.startsWith(from)) return undefined;
  try {
    return readFileSync(join(folder, url.slice(from.length).replace(/\?.*/, "")));
  } catch {
    return undefined;
  }
}

export interface OfficePage {
  readonly page: Page;
  /** Errors of the page, and every request that neither place answers. */
  readonly complaints: string[];
}

/** @param instead  files that are answered otherwise, by their address; null where nobody answers */
export async function officePage(
  browser: Contexts,
  instead: Readonly<Record<string, string | null>> = {},
): Promise<OfficePage> {
  const page = await (await browser.newContext()).newPage();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  await page.route("**/*", async (route) => {
    const url = route.request().url();
    const body = url in instead ? instead[url] : fileAt(url);
    if (body === undefined) complaints.push(`request to ${url}`);
    if (body === undefined || body === null) return route.abort();
    const kind = kinds[/\.(\w+)(?:\?.*)?$/.exec(url)?.[1] ?? ""] ?? "application/octet-stream";
    return route.fulfill({ contentType: kind, body });
  });
  return { page, complaints };
}

/** How the program marks a call: error values are handed over as such. */
export const withErrors = 4;
/** ... and every object in it is a rich value. */
export const withRichValues = 8;

export interface Call {
  readonly id: string;
  /** As the program sends them: null for an empty cell or what is left out, ranges as rows. */
  readonly given: readonly unknown[];
  readonly flags?: number;
}

/** What the program is told of a call. */
export type Told =
  | { readonly value: unknown }
  /** 7 is #VALUE!, 1 is #N/A, 2 an exception: also where a function is not there. */
  | { readonly failed: number; readonly says: string };

/** Rich values travel as text inside an object. */
export const rich = (value: object): object => ({ value: JSON.stringify(value) });

const resultsIn = (body: unknown): [number, boolean, unknown, unknown][] => {
  const found: [number, boolean, unknown, unknown][] = [];
  const look = (part: unknown): void => {
    if (typeof part !== "object" || part === null) return;
    if (Array.isArray(part) && typeof part[0] === "number" && typeof part[1] === "boolean") {
      found.push(part as [number, boolean, unknown, unknown]);
    } else Object.values(part).forEach(look);
  };
  look((body as { Actions?: unknown }).Actions);
  return found;
};

/** Hands calls to the runtime as the program does, in one batch, and waits for all their results. */
export async function ask(page: Page, calls: readonly Call[]): Promise<Told[]> {
  const entries = calls.map(({ id, given, flags = withErrors + withRichValues }, index) => [
    ...[1, 1000, ""],
    [index + 1, id, given, "Sheet1!A1", flags, null],
    0,
  ]);
  const message = JSON.stringify({ type: 3, message: { entries } });
  await page.evaluate((text) => {
    const host = window as unknown as {
      sent: unknown[];
      _richApiNativeBridge: { onMessageFromHost(text: string): void };
    };
    host.sent.length = 0;
    host._richApiNativeBridge.onMessageFromHost(text);
  }, message);
  const told = new Map<number, Told>();
  for (let waited = 0; told.size < calls.length && waited < 100; waited += 1) {
    const sent = await page.evaluate(() => (window as unknown as { sent: unknown[] }).sent);
    for (const [id, isDone, value, code] of sent.flatMap(resultsIn)) {
      told.set(id, isDone ? { value } : { failed: Number(code), says: String(value ?? "") });
    }
    if (told.size < calls.length) await page.waitForTimeout(50);
  }
  return calls.map((call, index) => {
    const answer = told.get(index + 1);
    if (!answer) throw new Error(`${call.id} was never answered`);
    return answer;
  });
}

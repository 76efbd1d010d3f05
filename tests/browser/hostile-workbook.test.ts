/**
 * A workbook that a stranger mailed, opened on the built page: nothing of it runs, nothing of it is
 * asked for on the network, and the page goes on.
 */
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { host } from "../../src/cli/static-server";
import { escapeAttribute } from "../../src/xlsx/xml/escape";
import { partsWith, sheetOf, zipped } from "../xlsx/files";
import { hasBrowser, type Served, serve } from "./browser";
import { watchPolicy } from "./policy-refusals";

const run = (code: string) => `<img src=x onerror="${code}">`;
const evil = run("document.title='run'");

/** `elsewhere` is an address that hears whoever asks it. */
function hostile(elsewhere: string): Buffer {
  const formulas = [
    "A2*2",
    `HYPERLINK("javascript:document.title='run'","press")`,
    `WEBSERVICE("${elsewhere}w")`,
    `_xlfn.WEBSERVICE("${elsewhere}w")`,
    `_xlfn.IMAGE("${elsewhere}i.png")`,
    `'[${elsewhere}x.xlsx]S'!A1`,
    `cmd|'/c calc'!A0`,
    "bad",
    `1${"+1".repeat(4000)}`,
    "SUM(A1:XFD1048576)",
  ];
  const cells = formulas.map((text) => `<c><f>${escapeAttribute(text)}</f><v>1</v></c>`).join("");
  const texts = [evil, "=1+1", `=HYPERLINK("${elsewhere}","x")`, "\u202eslx.exe"].map(
    (text) => `<c t="inlineStr"><is><t>${escapeAttribute(text)}</t></is></c>`,
  );
  const rows = `<row r="1">${cells}</row><row r="2"><c r="A2"><v>2.5</v></c>${texts.join("")}</row>`;
  const parts = partsWith(sheetOf(rows));
  const names =
    '<definedNames><definedName name="bad">bad+1</definedName><definedName name="__proto__">Data!$A$2</definedName></definedNames>';
  const listed = (parts["xl/workbook.xml"] ?? "")
    .replace('"Data"', `"${escapeAttribute("<img src=x onerror=1>")}"`)
    .replace("</sheets>", `</sheets>${names}`);
  return Buffer.from(zipped({ ...parts, "xl/workbook.xml": listed }));
}

/** What the page's own policy makes of code and addresses that are not its own. */
const attempts = (page: Page, elsewhere: string) =>
  page.evaluate(async (address) => {
    const later = <T>(work: () => T): Promise<string> =>
      new Promise((told) => {
        // apart from what the test driver may do
        setTimeout(() => {
          try {
            told(`did: ${String(work())}`);
          } catch (refused) {
            told((refused as Error).name);
          }
        });
      });
    const script = document.createElement("script");
    script.textContent = "document.title = 'run'";
    document.head.append(script);
    return {
      evaluated: await later(() => (0, eval)("1+1") as unknown),
      made: await later(() => new Function("return 1")() as unknown),
      fetched: await fetch(address).then(
        () => "did",
        () => "refused",
      ),
      isRun: document.title === "run",
    };
  }, elsewhere);

const refusedAll = { evaluated: "EvalError", made: "EvalError", fetched: "refused", isRun: false };

describe.runIf(hasBrowser)("what a stranger sends", () => {
  let served: Served;
  let other: Server;
  let elsewhere = "";
  const asked: string[] = [];

  beforeAll(async () => {
    served = await serve();
    other = createServer((request, response) => {
      asked.push(request.url ?? "");
      response.writeHead(200, { "Access-Control-Allow-Origin": "*" }).end();
    });
    await new Promise<void>((listening) => other.listen(0, host, listening));
    elsewhere = `http://${host}:${String((other.address() as AddressInfo).port)}/`;
  });
  afterAll(async () => {
    await served?.close();
    other?.closeAllConnections();
    other?.close();
  });

  it.each(["index.html", "taskpane.html", "help/index.html"])(
    "cannot run text as code, nor speak to another address, from %s",
    async (name) => {
      const { page } = await served.open();
      // the program's runtime is not there, and its place stays empty
      await page.route("https://**", (route) => route.abort());
      await page.goto(served.address + name, { waitUntil: "domcontentloaded" });
      expect(await attempts(page, elsewhere)).toEqual(refusedAll);
      expect(asked).toEqual([]);
      await page.context().close();
    },
  );

  it("opens as a workbook, runs nothing, asks for nothing, and is saved as it was", async () => {
    const { page, complaints } = await served.open();
    const dialogs: string[] = [];
    page.on("dialog", (dialog) => {
      dialogs.push(dialog.message());
      void dialog.dismiss();
    });
    const refusals = await watchPolicy(page);
    await page.goto(served.address);
    await page.waitForSelector("#save:enabled", { timeout: 60_000 });
    const bytes = hostile(elsewhere);
    const name = `${evil.replaceAll("/", "")}\u202e..xlsx`;
    await page.setInputFiles("input[type=file]", { name, mimeType: "", buffer: bytes });
    await page.locator("#news-words").getByText("is open.").waitFor({ timeout: 60_000 });
    const tasks = page.getByRole("navigation", { name: "Tasks" }).getByRole("button");
    for (const task of await tasks.all()) {
      await task.click();
      await page.locator("#pane").getByText("One moment.").waitFor({ state: "detached" });
    }
    expect(await page.locator("img[src='x']").count()).toBe(0);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.keyboard.press("Control+s"),
    ]);
    expect(download.suggestedFilename()).not.toMatch(/[/\\]/);
    const saved = await download.createReadStream();
    const pieces: Buffer[] = [];
    for await (const piece of saved) pieces.push(piece as Buffer);
    expect(Buffer.concat(pieces)).toEqual(bytes);
    expect(await page.title()).not.toBe("run");
    expect([...complaints, ...(await refusals()), ...dialogs, ...asked]).toEqual([]);
    await page.context().close();
  });
});

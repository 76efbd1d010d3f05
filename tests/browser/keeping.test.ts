/** The open workbook is kept by the browser, and there again; nothing is said to be kept before it is. */
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import { violations } from "../taskpane/page/checks";
import { rarely } from "../wide";
import { hasBrowser, type Served, serve } from "./browser";
import {
  at,
  chooserOf,
  goTo,
  openSheet,
  paneSays,
  saveByKeyboard,
  standing,
  typeInto,
} from "./workbench-page";

const tidy = join(root, "tests/second-opinion/xlsx/tidy.xlsx");

const news = (page: Page, words: string | RegExp) =>
  page.locator("#news-words").getByText(words).first().waitFor({ timeout: 60_000 });

const ready = (page: Page) => page.waitForSelector("#save:enabled", { timeout: 60_000 });

const amount = at("Batches", "Amount", 1);

const saved = async (page: Page) => (await saveByKeyboard(page)).bytes;

async function openFile(page: Page, file: string): Promise<void> {
  await (await chooserOf(page)).setFiles(file);
  await news(page, "is open.");
}

async function reload(page: Page): Promise<void> {
  await page.reload();
  await ready(page);
}

describe.runIf(hasBrowser)("the workbook that the browser keeps", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  const begun = async (prepare?: (context: BrowserContext) => Promise<unknown>) => {
    const opened = await served.open();
    await prepare?.(opened.page.context());
    opened.page.on("filechooser", () => undefined);
    // left all the same when it asks
    opened.page.on("dialog", (dialog) => void dialog.accept());
    await opened.page.goto(served.address);
    await ready(opened.page);
    return opened;
  };

  const another = async (page: Page): Promise<Page> => {
    const other = await page.context().newPage();
    await other.goto(served.address);
    await ready(other);
    return other;
  };

  /** The example with another amount, at its dose. */
  const edited = async (page: Page): Promise<void> => {
    await openSheet(page, "Batches");
    await typeInto(page, amount, "200");
  };

  it("is nothing while the example is looked at only, and is not kept yet right after an edit", async () => {
    const { page, complaints } = await begun();
    expect(await page.locator("#standing").innerText()).toBe("");
    await reload(page);
    expect(await page.locator("#news-words").innerText()).toBe("");
    await edited(page);
    // the pause is two seconds
    expect(await page.locator("#standing").innerText()).toBe("not kept yet");
    expect(await page.title()).toContain("(not kept yet)");
    await reload(page);
    expect(await page.locator("#news-words").innerText()).toBe("");
    await openSheet(page, "Batches");
    await goTo(page, amount);
    await paneSays(page, /^100/);
    expect(complaints).toEqual([]);
  });

  it("is open again after a reload, where one was, and saved it is byte for byte what it would have been", async () => {
    const first = await begun();
    await edited(first.page);
    await standing(first.page, "kept in this browser only");
    const without = await saved(first.page);
    await standing(first.page, "saved in the file");

    const { page, complaints } = await begun();
    await edited(page);
    await standing(page, "kept in this browser only");
    await goTo(page, at("Batches", "Oil kg", 1));
    await reload(page);
    await news(page, /^logbook\.xlsx is open again, as this browser kept it on/);
    await page
      .locator("#pane h2")
      .getByText(at("Batches", "Oil kg", 1))
      .waitFor();
    // By hand: 200 L x 0.915 = 183 kg.
    await paneSays(page, /^183\.00$/);
    expect(await page.locator("#standing").innerText()).toBe("kept in this browser only");
    expect(Buffer.from(await saved(page)).equals(Buffer.from(without))).toBe(true);
    await reload(page);
    await standing(page, "saved in the file");
    expect(await violations(page, ["#grid"])).toEqual([]);
    await page.getByRole("button", { name: "Begin with the example again" }).press("Enter");
    await page.waitForEvent("load");
    await ready(page);
    expect(await page.locator("#standing").innerText()).toBe("");
    expect(complaints).toEqual([]);
  });

  it("is called saved only when a page loaded anew opens what was saved, and nothing earlier", async () => {
    const { page, complaints } = await begun((context) =>
      context.addInitScript(() => {
        const make = URL.createObjectURL.bind(URL);
        URL.createObjectURL = (of) => {
          document.body.dataset.saidBefore = document.querySelector("#standing")?.textContent ?? "";
          return make(of);
        };
      }),
    );
    await edited(page);
    await saved(page);
    await standing(page, "saved in the file");
    await typeInto(page, amount, "300");
    await standing(page, "not kept yet");
    await page.keyboard.press("Control+s");
    await standing(page, "saved in the file");
    // while it was in no file yet
    expect(await page.locator("body").getAttribute("data-said-before")).toBe("not kept yet");
    await reload(page);
    await openSheet(page, "Batches");
    await goTo(page, amount);
    await paneSays(page, /^300/);
    expect(complaints).toEqual([]);
  });

  it("is in the list under Open, to be opened or forgotten by keyboard", async () => {
    const { page, complaints } = await begun();
    await edited(page);
    await openFile(page, tidy);
    await standing(page, "saved in the file");
    await page.keyboard.press("Control+o");
    await page.locator("#kept[open]").waitFor();
    expect(await violations(page, ["#grid"])).toEqual([]);
    const line = page.locator("#kept-list li");
    expect(await line.count()).toBe(1);
    expect(await line.innerText()).toMatch(/logbook\.xlsx[^]*, \d+ kB, kept in this browser only/);
    await page.getByRole("button", { name: /^Open logbook\.xlsx/ }).press("Enter");
    await news(page, "logbook.xlsx is open again");
    await goTo(page, amount);
    await paneSays(page, /^200/);
    // the file is in the list now: it is in a file too, and one press forgets it
    await page.keyboard.press("Control+o");
    await page.getByRole("button", { name: "Forget tidy.xlsx" }).press("Enter");
    expect(await line.count()).toBe(0);
    await page.keyboard.press("Escape");
    await openFile(page, tidy);
    // left and asked for again as fast as keys come
    await page.keyboard.press("Control+o");
    await page.locator("#kept[open]").waitFor();
    for (let times = 0; times < 5; times += 1) {
      await Promise.all(["Escape", "Control+o"].map((keys) => page.keyboard.press(keys)));
      await page.locator("#kept[open]").waitFor();
    }
    await page.getByRole("button", { name: "Forget logbook.xlsx" }).press("Enter");
    await page
      .getByRole("button", { name: "logbook.xlsx is in no file: forget it?" })
      .press("Enter");
    expect(await line.count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  rarely(
    "is not written over by a second tab, which says so and keeps one of its own",
    async () => {
      const { page } = await begun();
      await edited(page);
      await standing(page, "kept in this browser only");
      const other = await another(page);
      await news(other, "It is open in another tab or window too");
      await openSheet(other, "Batches");
      await typeInto(other, amount, "300");
      await standing(other, "not kept yet");
      await standing(other, "kept in this browser only");
      await reload(page);
      await openSheet(page, "Batches");
      await goTo(page, amount);
      await paneSays(page, /^200/);
      await reload(other);
      await openSheet(other, "Batches");
      await goTo(other, amount);
      await paneSays(other, /^300/);
      await page.keyboard.press("Control+o");
      expect(await page.locator("#kept-list li").innerText()).toContain("open in another tab");
    },
  );

  rarely(
    "says in words that there is no room, claims nothing, and asks before the edits are lost",
    async () => {
      const { page } = await begun((context) =>
        context.addInitScript(() => {
          const { put } = IDBObjectStore.prototype;
          IDBObjectStore.prototype.put = function (value: unknown, key?: IDBValidKey) {
            if (value instanceof Uint8Array) throw new DOMException("full", "QuotaExceededError");
            return put.call(this, value, key);
          };
        }),
      );
      await edited(page);
      await news(
        page,
        "logbook.xlsx could not be kept in this browser: it gives this page no more room",
      );
      expect(await page.locator("#standing").innerText()).toBe("not kept yet");
      await (await chooserOf(page)).setFiles(tidy);
      await page.locator("#ask").getByText("The edits to logbook.xlsx are not saved").waitFor();
      await page.keyboard.press("Escape");
      await reload(page);
      expect(await page.locator("#standing").innerText()).toBe("");
    },
  );

  rarely(
    "never keeps the page from opening: half of it, something else, or no database at all",
    async () => {
      const { page } = await begun();
      await edited(page);
      await standing(page, "kept in this browser only");
      const spoil = (what: string) =>
        page.evaluate(
          (kind) =>
            new Promise<void>((done, failed) => {
              const asked = indexedDB.open("titrebook-workbooks");
              asked.onerror = () => failed(asked.error);
              asked.onsuccess = () => {
                const act = asked.result.transaction("workbooks", "readwrite");
                const objects = act.objectStore("workbooks");
                const keys = objects.getAllKeys();
                keys.onsuccess = () => {
                  const bytes = keys.result.find((key) => String(key).startsWith("bytes/")) ?? "";
                  if (kind === "half") objects.delete(bytes);
                  if (kind === "other") objects.put(new Uint8Array(5), bytes);
                  if (kind === "nothing") objects.put("?", String(bytes).replace("bytes", "entry"));
                };
                act.oncomplete = () => {
                  asked.result.close();
                  done();
                };
              };
            }),
          what,
        );
      await spoil("half");
      await reload(page);
      await news(page, "Of logbook.xlsx this browser kept a part only");
      await edited(page);
      await standing(page, "kept in this browser only");
      await spoil("nothing");
      await reload(page);
      expect(await page.locator("#standing").innerText()).toBe("");
      const none = await begun((context) =>
        context.addInitScript(() => {
          Object.defineProperty(window, "indexedDB", { value: undefined });
        }),
      );
      await edited(none.page);
      await news(none.page, "logbook.xlsx could not be kept in this browser, which keeps nothing");
    },
  );

  rarely(
    "goes into the same file where the browser writes into files, unless that was changed elsewhere",
    async () => {
      const { page } = await begun((context) =>
        context.addInitScript(() => {
          const asked = { times: 0 };
          Object.assign(window, {
            asked,
            showSaveFilePicker: async ({ suggestedName }: { suggestedName: string }) => {
              asked.times += 1;
              const folder = await navigator.storage.getDirectory();
              return folder.getFileHandle(suggestedName, { create: true });
            },
          });
        }),
      );
      const times = () =>
        page.evaluate(() => (window as unknown as { asked: { times: number } }).asked.times);
      const size = () =>
        page.evaluate(async () => {
          const folder = await navigator.storage.getDirectory();
          return (await (await folder.getFileHandle("logbook.xlsx")).getFile()).size;
        });
      await edited(page);
      await page.keyboard.press("Control+s");
      await news(page, /^Saved in the file logbook\.xlsx\./);
      expect(await size()).toBeGreaterThan(10_000);
      await typeInto(page, amount, "250");
      await standing(page, "kept in this browser only");
      await reload(page);
      await typeInto(page, amount, "260");
      await page.keyboard.press("Control+s");
      await news(page, /^Saved in the file logbook\.xlsx\./);
      expect(await times()).toBe(0);
      await page.evaluate(async () => {
        const folder = await navigator.storage.getDirectory();
        const writing = await (await folder.getFileHandle("logbook.xlsx")).createWritable();
        await writing.write("something else");
        await writing.close();
      });
      await typeInto(page, amount, "270");
      await page.keyboard.press("Control+s");
      await news(page, "logbook.xlsx was changed elsewhere: it was not written over");
      expect(await size()).toBe("something else".length);
      await page.keyboard.press("Control+s");
      await news(page, /^Saved in the file logbook\.xlsx\./);
      expect(await times()).toBe(1);
    },
  );
});

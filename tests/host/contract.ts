/** What every host must do. Run it on a host by giving it a way to open a book. */
import { afterEach, describe, expect, it } from "vitest";
import type { Event } from "../../src/sheet/port";
import type { Book } from "../../src/sheet/book";
import {
  block,
  done,
  logbook,
  type Offers,
  type OpenBook,
  type OpenHost,
  set,
  value,
} from "./contract-parts";
import { readingContract } from "./contract-reading";
import { writingContract } from "./contract-writing";
import { recordingContract } from "./contract-recording";

export function hostContract(name: string, offers: Offers, open: OpenBook): void {
  describe(name, () => {
    const opened: OpenHost[] = [];
    const opening = async (book: Book): Promise<OpenHost> => {
      const host = await open(book);
      opened.push(host);
      return host;
    };
    afterEach(() => {
      for (const host of opened.splice(0)) host.close();
    });

    describe("reading", () => {
      readingContract(opening);
    });

    describe("writing", () => {
      writingContract(offers, opening);
    });

    describe("watching", () => {
      it("calls back on a change and on a selection, until it is told to stop", async () => {
        const { host, select } = await opening(logbook);
        const heard: Event[] = [];
        const stop = host.watch((event) => heard.push(event));
        await done(host, set(block(2, 0), [[value("Z")]]));
        expect(heard).toContainEqual({ event: "change" });
        await select(block(2, 0));
        expect(heard).toContainEqual({ event: "selection" });
        stop();
        heard.length = 0;
        await done(host, set(block(2, 0), [[value("Y")]]));
        await select(block(3, 0));
        expect(heard).toEqual([]);
      });
    });

    describe("recording", () => {
      recordingContract(opening);
    });
  });
}

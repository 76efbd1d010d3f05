import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import { hasBrowser } from "./browser";
import { type Contexts, contextsOfChromium } from "./shared-browser";
import {
  address,
  ask,
  type Call,
  type OfficePage,
  officePage,
  rich,
  withErrors,
  withRichValues,
  runtimeAddress,
} from "./office-files";
import { watchPolicy } from "./policy-refusals";

const wrong = 7;
const notThere = 1;
const thrown = 2;

const metadata = JSON.parse(readFileSync(join(root, "dist/functions.json"), "utf8")) as {
  functions: { id: string; parameters: { optional: boolean; dimensionality: string }[] }[];
};

describe.runIf(hasBrowser)("with the program's own runtime files", () => {
  let browser: Contexts;
  beforeAll(async () => {
    browser = await contextsOfChromium();
  });
  afterAll(() => browser?.close());

  describe("the functions", () => {
    let opened: OfficePage;
    beforeAll(async () => {
      opened = await officePage(browser);
      await opened.page.goto(`${address}functions.html`);
    });

    const told = async (id: string, ...given: unknown[]) =>
      (await ask(opened.page, [{ id, given }]))[0];

    it("are registered one and all, as functions.json names them, without a complaint", async () => {
      const registered = await opened.page.evaluate(() =>
        Object.keys(
          (window as unknown as { CustomFunctions: { _association: { mappings: object } } })
            .CustomFunctions._association.mappings,
        ),
      );
      expect(registered.sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
      expect(opened.complaints).toEqual([]);
    });

    it("answer a call with the figure", async () => {
      // by hand: 56.1 x 0.1 x 2.3 / 10
      expect(await told("ACIDVALUE", 2.3, 0.1, 10)).toEqual({ value: 1.2903 });
    });

    it("pass over cells that are not filled in, however the program hands them over", async () => {
      for (const empty of [null, "", 0]) {
        expect(await told("CORRECTED", [[2.4, empty, 2.5, 2.45]], [[0.15]])).toEqual({
          value: 2.3,
        });
      }
    });

    it("say #N/A with a sentence where something needed is not filled in", async () => {
      for (const empty of [null, "", 0]) {
        expect(await told("ACIDVALUE", 2.3, 0.1, empty)).toEqual({
          failed: notThere,
          says: expect.stringContaining("sample mass"),
        });
      }
    });

    it("take an optional argument as left out, whether null or not sent at all", async () => {
      // by hand: 1.2903 x 282 / 561
      const expected = (1.2903 * 282) / 561;
      for (const given of [[1.2903, null], [1.2903]]) {
        const answer = await told("FFAFROMACIDVALUE", ...given);
        expect((answer as { value: number }).value).toBeCloseTo(expected, 12);
      }
    });

    const errorForms: readonly (readonly [string, number, (code: string) => unknown])[] = [
      ["plain", withErrors, (code) => ({ type: "CustomFunctionError", code })],
      [
        "rich, of the runtime's own kind",
        withErrors + withRichValues,
        (code) => rich({ type: "CustomFunctionError", code }),
      ],
      [
        "rich, as data types write it",
        withErrors + withRichValues,
        (code) => rich({ type: "Error", basicType: "Error", basicValue: code }),
      ],
    ];

    it.each(errorForms)(
      "pass #N/A on, and say of any other error which argument holds it: %s",
      async (_, flags, error) => {
        const [missing, divided, inList] = await ask(opened.page, [
          { id: "ACIDVALUE", given: [2.3, 0.1, error("#N/A")], flags },
          { id: "ACIDVALUE", given: [2.3, 0.1, error("#DIV/0!")], flags },
          { id: "CORRECTED", given: [[[2.4, error("#NAME?")]], null], flags },
        ]);
        expect(missing).toMatchObject({ failed: notThere });
        expect(divided).toEqual({
          failed: wrong,
          says: expect.stringMatching(/sampleMass.*#DIV\/0!/),
        });
        expect(inList).toMatchObject({ failed: wrong });
      },
    );

    it("take the figure out of a rich value", async () => {
      const formatted = rich({ type: "FormattedNumber", basicValue: 10, numberFormat: "0.00 g" });
      expect(await told("ACIDVALUE", 2.3, 0.1, formatted)).toEqual({ value: 1.2903 });
      const double = rich({ type: "Double", basicValue: 2.4 });
      expect(await told("CORRECTED", [[double, 2.6]], null)).toEqual({ value: 2.5 });
    });

    it("refuse a text with a sentence that the program shows", async () => {
      expect(await told("ACIDVALUE", 2.3, 0.1, "ten")).toEqual({
        failed: wrong,
        says: expect.stringContaining('"ten"'),
      });
    });

    it("spill rows, with empty texts and never null in them", async () => {
      const answer = await told(
        "EACHACIDVALUE",
        [
          [2.1, null],
          [3.1, 4.1],
        ],
        [[0.1]],
        0.1,
        [[10]],
      );
      // by hand: 5.61 x (V - 0.1) / 10
      expect(answer).toEqual({
        value: [
          [1.122, ""],
          [1.683, 2.244],
        ],
      });
    });

    it("answer whatever they are given: nothing throws, nothing stays without an answer", async () => {
      const odd = [null, 0, "", -1, 1e308, "text", true, [[]], rich({ type: "Entity", text: "x" })];
      const calls: Call[] = metadata.functions.flatMap(({ id, parameters }) =>
        odd.map((each) => ({ id, given: parameters.map(() => each) })),
      );
      for (const [index, answer] of (await ask(opened.page, calls)).entries()) {
        const isSound = "value" in answer || [wrong, notThere].includes(answer.failed);
        expect([calls[index], answer, isSound]).toEqual([calls[index], answer, true]);
        if ("failed" in answer) expect(answer.says.length).toBeGreaterThan(5);
      }
    });

    it("answer by an older list of functions, which knows an argument less", async () => {
      // The runtime puts its own object where the last argument would be.
      const calls = metadata.functions
        .filter(({ parameters }) => parameters.at(-1)?.optional)
        .map(({ id, parameters }) => ({ id, given: parameters.slice(0, -1).map(() => null) }));
      expect(calls.length).toBeGreaterThan(5);
      for (const answer of await ask(opened.page, calls)) {
        expect(answer).toMatchObject({ failed: notThere });
      }
      expect(await told("CORRECTED", [[2.4, 2.6]])).toEqual({ value: 2.5 });
    });

    it("answer by a newer list, which knows an argument more and a function more", async () => {
      expect(await told("CORRECTED", [[2.4, 2.6]], [[0.5]], null)).toEqual({ value: 2 });
      const [missing, there] = await ask(opened.page, [
        { id: "NOTYETTHERE", given: [1] },
        { id: "CORRECTED", given: [[[2.4, 2.6]], null] },
      ]);
      expect(missing).toMatchObject({ failed: thrown });
      expect(there).toEqual({ value: 2.5 });
    });
  });

  describe("the pane", () => {
    const says = (page: OfficePage["page"], words: RegExp) =>
      page.locator("#pane").getByText(words).waitFor({ timeout: 20_000 });

    it("says outside the program that it is a pane inside it, asks nobody else, and registers nothing twice", async () => {
      const { page, complaints } = await officePage(browser);
      const warnings: string[] = [];
      page.on("console", (message) => {
        if (/Duplicated|InvalidArg/.test(message.text())) warnings.push(message.text());
      });
      const refused = await watchPolicy(page);
      await page.goto(`${address}taskpane.html`);
      await says(page, /The spreadsheet program does not answer/);
      // the runtime waits three seconds before it asks for its maker's telemetry
      await page.waitForTimeout(4000);
      expect((await refused()).filter((each) => !/telemetry/.test(each))).toEqual([]);
      expect([...complaints, ...warnings]).toEqual([]);
    });

    it("says the same when the runtime cannot be had", async () => {
      const { page, complaints } = await officePage(browser, {
        [`${runtimeAddress}office.js`]: null,
      });
      await page.goto(`${address}taskpane.html`);
      await says(page, /The spreadsheet program does not answer/);
      expect(complaints).toEqual([]);
    });

    it("says so within ten seconds when the runtime is there and never ready", async () => {
      const silent =
        "window.Office = { onReady: () => new Promise(() => {}), HostType: { Excel: 'Excel' } };";
      const { page, complaints } = await officePage(browser, {
        [`${runtimeAddress}office.js`]: silent,
      });
      await page.goto(`${address}taskpane.html`);
      await says(page, /Waiting for the spreadsheet program/);
      await page
        .locator("#pane")
        .getByText(/does not answer/)
        .waitFor({ timeout: 10_000 });
      expect(complaints).toEqual([]);
    });

    it("has the functions registered before the pane is drawn", async () => {
      const { page } = await officePage(browser);
      await page.addInitScript(() => {
        addEventListener("DOMContentLoaded", () => {
          const { CustomFunctions } = window as unknown as {
            CustomFunctions: { _association: { mappings: object } };
          };
          Object.assign(window, {
            registered: Object.keys(CustomFunctions._association.mappings).length,
          });
        });
      });
      await page.goto(`${address}taskpane.html`);
      const count = await page.evaluate(
        () => (window as unknown as { registered: number }).registered,
      );
      expect(count).toBe(metadata.functions.length);
    });
  });
});

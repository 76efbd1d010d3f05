/**
 * Text of any script is taken, drawn and kept, though the page brings no hyphenation, no languages and no
 * reader of fonts (see src/cli/build/stand-ins.js), and the machine's fonts are read by nobody.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bookOf } from "../../xlsx/files";
import { hasBrowser, type OpenPage, type Served, serve } from "../browser";
import { goTo, openBytes } from "../workbench-page";

const bytes = bookOf('<row r="1"><c r="A1"><v>2</v></c></row>');

/** From the Universal Declaration of Human Rights, article 1, in the languages that shape text differently. */
const shaped = [
  [
    "Latin, longer than its cell",
    "All human beings are born free and equal in dignity and rights. ".repeat(6),
  ],
  ["Chinese", "人人生而自由，在尊严和权利上一律平等。"],
  ["Arabic", "يولد جميع الناس أحرارًا متساوين"],
  ["German with a soft hyphen", "Grund\u00adrechts\u00adschutz\u00adbestimmungen"],
  ["accents beside their letters, and pictures", "cafe\u0301 🛶 👩🏽‍🔬 ⚗️"],
] as const;

const alike = [
  ["Japanese", "すべての人間は、生れながらにして自由であり、"],
  ["Korean", "모든 인간은 태어날 때부터 자유로우며"],
  ["Hindi", "सभी मनुष्यों को गौरव और अधिकारों के"],
  ["Thai", "มนุษย์ทั้งหลายเกิดมามีอิสระ"],
] as const;

const texts = [...shaped, ...alike];

describe.runIf(hasBrowser)("text in a cell", () => {
  let served: Served;
  let shown: OpenPage;

  beforeAll(async () => {
    served = await serve();
    shown = await served.open({ permissions: ["local-fonts"] });
    const { page } = shown;
    await page.addInitScript(() => {
      Object.assign(window, { queryLocalFonts: () => console.error("The fonts were asked for.") });
    });
    await page.goto(served.address);
    await page.waitForSelector("#save:enabled", { timeout: 60_000 });
    await openBytes(page, "text.xlsx", bytes);
  }, 120_000);
  afterAll(async () => {
    await shown.page.context().close();
    await served.close();
  });

  it.each(texts.map(([script, text], at) => [script, text, `C${String(4 + at)}`] as const))(
    "is drawn and kept: %s",
    async (_script, text, address) => {
      const { page } = shown;
      const drawn = async () => {
        await goTo(page, "A1");
        return page.locator("#grid").screenshot();
      };
      const before = await drawn();
      await goTo(page, address);
      await page.keyboard.press("F2");
      await page.keyboard.insertText(text);
      await page.keyboard.press("Enter");
      expect((await drawn()).equals(before)).toBe(false);
      await goTo(page, address);
      await page.locator("#pane .explain-value").getByText(text.trim(), { exact: true }).waitFor();
    },
  );

  it("makes its row higher when it has lines", async () => {
    const { page } = shown;
    const next = async () => {
      await goTo(page, "A30");
      await page.keyboard.press("F2");
      const box = await page.locator('[id*="EDITOR__DOCS_NORMAL"]').first().boundingBox();
      await page.keyboard.press("Escape");
      return box?.y ?? Number.NaN;
    };
    const before = await next();
    await goTo(page, "C20");
    await page.keyboard.press("F2");
    await page.keyboard.insertText("人人生而自由");
    await page.keyboard.press("Alt+Enter");
    await page.keyboard.insertText("free and equal");
    await page.keyboard.press("Enter");
    expect(await next()).toBeGreaterThan(before + 10);
  });

  it("is measured without a complaint and without the machine's fonts", () => {
    expect(shown.complaints).toEqual([]);
  });
});

/**
 * An error says why it stands in its cell, whatever else the cell has: words to choose from, a note, a
 * place among the inputs; typed, worked out, or read from a file.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { office, partsWith, sheetOf, zipped } from "../../xlsx/files";
import { hasBrowser, type OpenPage, type Served, serve } from "../browser";
import { at, goTo, gridIsReady, openBytes, openSheet, paneSays, typeInto } from "../workbench-page";

const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const validated =
  '<dataValidations count="1"><dataValidation type="list" allowBlank="1" showErrorMessage="1" sqref="B1:B6"><formula1>"oak,ash"</formula1></dataValidation></dataValidations>';
const note = (address: string) =>
  `<comment ref="${address}" authorId="0"><text><r><t>Drawn from the top of the drum.</t></r></text></comment>`;

/** B1:B6 has words to choose from, C1:C6 a note each; the second row holds errors already. */
const bytes = zipped(
  partsWith(
    sheetOf(
      '<row r="1"><c r="A1" t="inlineStr"><is><t>lots</t></is></c><c r="B1" t="inlineStr"><is><t>oak</t></is></c></row><row r="2"><c r="B2" t="e"><v>#N/A</v></c><c r="C2" t="e"><f>1/0</f><v>#DIV/0!</v></c></row>',
      validated,
    ),
    {
      "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/comments" Target="../comments1.xml"/></Relationships>`,
      "xl/comments1.xml": `<comments xmlns="${main}"><authors><author>Ferry</author></authors><commentList>${[1, 2, 3, 4, 5, 6].map((row) => note(`C${String(row)}`)).join("")}</commentList></comments>`,
    },
  ),
);

const put = /#N\/A itself was put into this cell/;
const divided = /Something is divided by 0/;
const ours = /"lots"/;
const reads = /It reads B2, where #N\/A stands/;

describe.runIf(hasBrowser)("an error in a cell that can be typed into", () => {
  let served: Served;
  let shown: OpenPage;

  beforeAll(async () => {
    served = await serve();
    shown = await served.open();
    const { page } = shown;
    await page.goto(served.address);
    await page.waitForSelector("#save:enabled", { timeout: 60_000 });
    await gridIsReady(page);
  }, 120_000);
  afterAll(async () => {
    await shown.page.context().close();
    await served.close();
  });

  it("says why among the inputs of our own tables, with the words of its heading", async () => {
    const { page } = shown;
    await openSheet(page, "Titrations");
    const titre = at("Titrations", "Titre 1 mL", 1);
    await typeInto(page, titre, "#N/A");
    await goTo(page, titre);
    await paneSays(page, put);
    await typeInto(page, titre, "=1/0");
    await goTo(page, titre);
    await paneSays(page, divided);
  });

  it("opens with the reasons of a file's own", async () => {
    const { page } = shown;
    // what was typed above is kept in the browser, and nothing is asked
    await openBytes(page, "errors.xlsx", bytes);
    await goTo(page, "B2");
    await paneSays(page, put);
    await goTo(page, "C2");
    await paneSays(page, divided);
    await paneSays(page, "Drawn from the top of the drum.");
  });

  it.each(
    ["B", "C"].flatMap((column) =>
      (
        [
          ["3", "#N/A", put],
          ["4", "=TITRE.CORRECTED(A1)", ours],
          ["5", "=1/0", divided],
          ["6", "=SUM(B2,1)", reads],
        ] as const
      ).map(([row, text, why]) => [`${column}${row}`, text, why] as const),
    ),
  )("says why in %s, where %s is typed, each time it is gone to", async (address, text, why) => {
    const { page } = shown;
    await typeInto(page, address, text);
    for (const elsewhere of ["A1", "D9"]) {
      await goTo(page, elsewhere);
      await goTo(page, address);
      await paneSays(page, why);
    }
    if (address.startsWith("C")) await paneSays(page, "Drawn from the top of the drum.");
    await page.locator("#announcer").getByText(why).waitFor();
    expect(shown.complaints).toEqual([]);
  });
});

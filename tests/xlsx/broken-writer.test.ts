/** The writer is broken on purpose: what it writes never leaves as a file. */
import { afterEach, describe, expect, it, vi } from "vitest";
import { shareWorkbook } from "../../src/partner/sharing";
import { isFileProblem, newXlsx, patchXlsx, sayFile } from "../../src/xlsx";
import type * as Escape from "../../src/xlsx/xml/escape";
import { bookOf } from "./files";
import { book, setFormula } from "./broken-writer";

/** What becomes of every text on its way into a part. */
const broken = vi.hoisted(() => ({ by: (text: string) => text, tag: "" }));

vi.mock("../../src/xlsx/xml/escape", async (original) => {
  const real = await original<typeof Escape>();
  return { ...real, escapeText: (text: string) => real.escapeText(broken.by(text)) + broken.tag };
});

afterEach(() => {
  broken.by = (text) => text;
  broken.tag = "";
});

const sentence = (place: string) =>
  `The new file was read back, and the formula of ${place} is not the one that was meant: nothing was saved.`;

const said = (found: unknown): unknown => (isFileProblem(found) ? sayFile(found) : found);

/** As the name of a call in brackets once was replaced one place too far left. */
const doubledLetter = (text: string) => text.replace("TITRE_CATALYST", "TITRE_CATALYSTT");

describe("a writer that spoils formulas", () => {
  const formula = '=(TITRE.CATALYST(A1,B1,"KOH",90,0.7))/453.59';

  it.each([
    ["another name", doubledLetter],
    ["another cell", (text: string) => text.replace("A1", "A2")],
    ["a bracket less", (text: string) => text.replace(/^\(/, "")],
    ["another text", (text: string) => text.replace("KOH", "NaOH")],
    ["nothing", () => ""],
  ])("is refused the save of a cell where it writes %s", (_, by) => {
    broken.by = by;
    expect(said(patchXlsx(bookOf(""), [setFormula(2, 2, formula)]))).toBe(sentence("Data!C3"));
    broken.by = (text) => text;
    expect(patchXlsx(bookOf(""), [setFormula(2, 2, formula)])).toBeInstanceOf(Uint8Array);
  });

  it("is refused a new workbook, a table's column and a name", () => {
    broken.by = doubledLetter;
    expect(said(newXlsx(book(formula)))).toBe(sentence("Log!B2"));
    const column = { do: "add-table", sheet: "Data", name: "Lots" } as const;
    const table = [
      { ...column, area: { row: 0, column: 0, rows: 2, columns: 1 }, formulas: { Lot: formula } },
      {
        do: "set-cell",
        sheet: "Data",
        row: 0,
        column: 0,
        content: { kind: "value", value: "Lot" },
      },
    ] as const;
    expect(said(patchXlsx(bookOf(""), table))).toBe(sentence("Lots[Lot]"));
    const name = { do: "define-name", name: "dose", refersTo: formula } as const;
    expect(said(patchXlsx(bookOf(""), [name]))).toBe(sentence("dose"));
  });

  it("is refused the save when it loses a formula that nobody asked it to touch", () => {
    const shared =
      '<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="0">B1*2</f><v>1</v></c></row><row r="2"><c r="A2"><f t="shared" si="0"/><v>1</v></c></row>';
    broken.by = (text) => text.replace("B2", "B3");
    // The first cell held the text of both; the second has it written out.
    expect(said(patchXlsx(bookOf(shared), [setFormula(0, 0, "=1")]))).toBe(sentence("Data!A2"));
  });

  it("is refused a partner copy", () => {
    const given = newXlsx(book("=TITRE.ACIDVALUE(A2,0.1,10)/2"));
    if (isFileProblem(given)) throw new Error(sayFile(given));
    const options = { kind: "partner", fileName: "log.xlsx" } as const;
    broken.by = (text) => text.replace("56.1", "65.1");
    expect(said(shareWorkbook(given, options))).toBe(sentence("Log!B2"));
    broken.by = (text) => text;
    expect(isFileProblem(shareWorkbook(given, options))).toBe(false);
  });

  it("is refused bytes that nobody could open again", () => {
    broken.tag = "<c>";
    expect(said(patchXlsx(bookOf(""), [setFormula(0, 0, "=1")]))).toBe(
      "The new file could not be read back: nothing was saved.",
    );
  });
});

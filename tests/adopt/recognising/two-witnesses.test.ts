/** A word alone makes nothing sure: figures, arithmetic and neighbours tell apart what one word may be. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { readWords } from "../../../src/adopt/recognising/words/read-words";
import { sureFrom } from "../../../src/adopt/recognising/sure";
import { sheetOf } from "../../taskpane/logbook/typed-pane";
import { times } from "../../thorough";

type Rows = readonly (readonly LogbookValue[])[];

function columnOf(headings: readonly string[], rows: Rows, heading: string, before: Rows = []) {
  const columns = recogniseSheet(sheetOf([headings, ...before, ...rows]))[0]?.columns ?? [];
  const found = columns[headings.indexOf(heading)];
  if (!found) throw new Error(`no column ${heading}`);
  return found;
}

/** What oil takes beside new oil, in grams to the litre. */
const extras = fc.array(fc.integer({ min: 2, max: 60 }), { minLength: 5, maxLength: 8 });
const charges = fc.constantFrom(3.5, 5, 5.5, 7, 8, 9);

const lyeBook = (charge: number, told: number, more: readonly number[]): Rows =>
  more.map((extra, at) => {
    const litres = 90 + 15 * at;
    return [`B${String(at + 4)}`, litres, told, Math.round(litres * (charge + extra / 10))];
  });
const lyeHeadings = ["Batch", "Oil L", "KOH g/L", "KOH total g"];

describe("grams of lye to the litre under nothing but a word for lye", () => {
  it("are the base charge where the same comes again in what each batch got", () => {
    fc.assert(
      fc.property(charges, extras, (charge, more) => {
        const rows = lyeBook(charge, charge, more);
        expect(columnOf(lyeHeadings, rows, "KOH g/L").role).toBe("baseCharge");
      }),
      { numRuns: times(20) },
    );
  });

  it("are not called sure where they do not", () => {
    fc.assert(
      fc.property(charges, extras, (charge, more) => {
        const rows = lyeBook(charge, 5 * charge, more);
        expect(columnOf(lyeHeadings, rows, "KOH g/L").score).toBeLessThan(sureFrom);
      }),
      { numRuns: times(20) },
    );
  });
});

const read = [4.12, 6.83, 5.37, 9.04, 3.66];
const titrated = (
  headings: readonly string[],
  rough: (titre: number, at: number) => LogbookValue,
) =>
  [
    ["Date", "Drum", "Titre 1 mL", "Titre 2 mL", ...headings, "Blank mL", "Sample g"],
    read.map((each, at) => [
      46100 + at,
      `D${String(at)}`,
      each,
      each + 0.03,
      rough(each, at),
      0.15,
      10,
    ]),
  ] as const;

describe("a titration before the titration", () => {
  it.each([
    "Sighting titration mL",
    "Range finding titre mL",
    "Try titration mL",
    "Titration (orienting) mL",
    "Burette mL",
  ])("under “%s”, read to a whole millilitre, is no titre", (heading) => {
    const [headings, rows] = titrated([heading], (each, at) => Math.round(each) + (at % 2) + 1);
    expect(columnOf(headings, rows, heading).role).toBe("other");
    expect(columnOf(headings, rows, "Titre 1 mL").role).toBe("titre");
  });

  it.each([
    ["Schätztitration mL", "Titration 1 mL"],
    ["Titulación previa mL", "Titulación 1 mL"],
    ["Titulação prévia mL", "Titulação 1 mL"],
    ["Titrage préalable mL", "Titrage 1 mL"],
    ["Titolazione orientativa mL", "Titolazione 1 mL"],
    ["Verkennende titratie mL", "Titratie 1 mL"],
  ])("is called “%s” too", (heading, titre) => {
    const headings = [titre, heading, "Oil L"];
    const rows = read.map((each, at) => [each, each, 90 + at]);
    expect(columnOf(headings, rows, heading).role).toBe("other");
    expect(columnOf(headings, rows, titre).role).toBe("titre");
  });
});

describe("where oil came from", () => {
  const found = (cell: (at: number) => LogbookValue) =>
    columnOf(
      ["Date", "Supplier", "Titre mL", "Blank mL", "Sample g"],
      [...read, ...read].map((each, at) => [46100 + at, cell(at), each, 0.15, 10]),
      "Supplier",
    );

  it("is the lot where each row has a mark of its own", () => {
    expect(found((at) => `QK-${String(at + 3)}`).role).toBe("lot");
  });

  it("is the kind of oil where a few oils come again and again", () => {
    expect(found((at) => (at % 2 === 0 ? "frying oil" : "tallow")).role).toBe("oil");
  });

  it("is never sure where a few kitchens come again and again", () => {
    expect(found((at) => (at % 2 === 0 ? "north quay" : "upper deck")).score).toBeLessThan(
      sureFrom,
    );
  });
});

describe("a word for a lot and for a batch", () => {
  const rows = read.map((each, at) => [`P${String(at)}`, `Q${String(at)}`, each, 90 + at]);

  it("is the batch beside a lot, and the lot beside a batch", () => {
    const beside = (other: string) =>
      columnOf(["Charge", other, "FFS %", "Öl L"], rows, "Charge").role;
    expect(beside("Fass")).toBe("batch");
    expect(beside("Ansatz")).toBe("lot");
  });
});

describe("a heading in a maker's own words", () => {
  it.each([
    ["g KOH / L fat", "catalystRate", "g/L", [9.2, 10.4, 8.8, 11.6, 9.9]],
    ["grams caustic per litre water", "strength", "g/L", [1, 1, 1, 1, 1]],
    ["FFA, % w/w", "ffa", "%", [1.2, 2.3, 1.8, 3.1, 0.9]],
    ["FFA Gew.-%", "ffa", "%", [1.2, 2.3, 1.8, 3.1, 0.9]],
  ] as const)("“%s” is read with its unit", (heading, role, unit, figures) => {
    const rows = figures.map((each, at) => [`B${String(at)}`, 90 + at, each]);
    expect(columnOf(["Batch", "Oil L", heading], rows, heading)).toMatchObject({ role, unit });
  });

  it("a row of units says more than the words above it", () => {
    const headings = ["Batch", "Oil in", "FFA", "Methanol", "KOH total", "Litres made"];
    const units = ["", "US gal", "%", "US gal", "g", "US gal"];
    const rows = read.map((each, at) => [
      `B${String(at)}`,
      90 + 3 * at,
      each,
      18,
      2900 + 40 * at,
      85 + 3 * at,
    ]);
    const found = columnOf(headings, rows, "Litres made", [units]);
    expect(found).toMatchObject({ role: "litresMade", unit: "US gal" });
  });

  it("what jumps from row to row numbers no rows", () => {
    const rows = [410, 380, 1240, 900, 2050].map((each, at) => [each, `B${String(at)}`, 90 + at]);
    expect(columnOf(["Line", "Batch", "Oil L"], rows, "Line").role).toBe("other");
  });

  it("drops of alcohol beside titres are no methanol for a batch", () => {
    const [headings, rows] = titrated(["Alcohol mL"], () => 0.12);
    expect(columnOf(headings, rows, "Alcohol mL").role).not.toBe("methanol");
  });

  it.each([
    ["wakxrs", "water"],
    ["dinsxty", "density"],
    ["stuckx", "stock"],
  ])("“%s”, two slips from “%s”, is a word that nobody knows", (word, known) => {
    expect(readWords(known)[0]?.meanings).not.toEqual([]);
    expect(readWords(word)[0]?.meanings).toEqual([]);
  });
});

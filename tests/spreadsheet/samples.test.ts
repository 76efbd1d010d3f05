/**
 * The sample workbooks in LibreOffice: every sheet can be printed, and the partner copies, their results
 * spoilt on purpose, come out with the results that stand in the files. Where it is not installed this
 * is left out, and says so; with REQUIRE_ALL=1 a missing one fails.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { shareWorkbook } from "../../src/partner/sharing";
import { titrations } from "../../src/workbook/tables/titrations";
import { isFileProblem, openXlsx, patchXlsx, sayFile } from "../../src/xlsx";
import { root } from "../rules/sources-of";
import { opened } from "../xlsx/answers";
import { printedBy } from "./printed";
import { hasLibreOffice, type ShownFiles, shownBy } from "./xlsx/libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const partner = "partner-logbook";
const names = ["logbook", "what-if", "checks"];

const files = readdirSync(join(root, "sample-workbooks"))
  .filter((file) => file.endsWith(".xlsx"))
  .map((file) => file.slice(0, -".xlsx".length));

const sample = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(join(root, "sample-workbooks", `${name}.xlsx`)));

function partnerCopy(name: string, bytes = sample(name)): Uint8Array {
  const shared = shareWorkbook(bytes, { kind: "partner", fileName: `${name}.xlsx` });
  if (isFileProblem(shared)) throw new Error(sayFile(shared));
  expect(shared.report.left).toEqual([]);
  return shared.bytes;
}

const firstTitration = 3;
const columnOf = (heading: string): number =>
  titrations.columns.findIndex((column) => column.heading === heading);
const [firstTitre, worth] = [columnOf("Titre 1 mL"), columnOf("Worth")];

/** The logbook with a word for the first titre of its first titration. */
function withWord(): Uint8Array {
  const made = patchXlsx(sample("logbook"), [
    {
      do: "set-cell",
      sheet: "Titrations",
      row: firstTitration,
      column: firstTitre,
      content: { kind: "value", value: "smudged" },
    },
  ]);
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
}

/** The logbook with its first batch made of a lot in Blends too: in place of one of the sample's own blend. */
function withBlend(): Uint8Array {
  const bytes = sample("logbook");
  const book = openXlsx(bytes);
  if (isFileProblem(book)) throw new Error(sayFile(book));
  const batches = book.sheets.find(({ name }) => name === "Batches");
  const first = (column: number): string =>
    String(batches?.cells.find((each) => each.row === 3 && each.column === column)?.value);
  const rows = [[first(1), first(2), 60, "L"]];
  const made = patchXlsx(
    bytes,
    rows.flatMap((row, at) =>
      row.map((value, column) => ({
        do: "set-cell" as const,
        sheet: "Blends",
        row: 3 + at,
        column,
        content: { kind: "value" as const, value },
      })),
    ),
  );
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
}

/** Every result of a formula replaced by one that is wrong. */
function spoilt(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const result = /(<c\b[^>]*>)(<f\b[^>]*?(?:\/>|>[^<]*<\/f>))<v>[^<]*<\/v>/g;
  for (const [name, content] of Object.entries(parts)) {
    if (!name.startsWith("xl/worksheets/sheet")) continue;
    const text = strFromU8(content).replace(result, (_, tag: string, formula: string) => {
      const plain = tag.replace(/ t="[^"]*"/, "");
      return `${plain}${formula}<v>999.25</v>`;
    });
    parts[name] = strToU8(text);
  }
  return zipSync(parts, { mtime: "2026-05-04T08:00:00" });
}

/** Every book in one opening of the program, on a machine that others use too, ms. */
const longestWait = 300_000;

const isError = (text: string): boolean => /^(?:#|Err:)/.test(text);

/** A day is shown as one: counted in days since 30 December 1899. */
const figureOf = (text: string): number =>
  /^\d{4}-\d{2}-\d{2}$/.test(text)
    ? (Date.parse(text) - Date.UTC(1899, 11, 30)) / 86_400_000
    : Number(text);

/** What differs from the results in the file: "Sheet!row,column: shown, not result". */
function differences(
  bytes: Uint8Array,
  shown: ReadonlyMap<string, readonly (readonly string[])[]>,
) {
  const found: string[] = [];
  let formulas = 0;
  for (const { name, cells } of opened(bytes).sheets) {
    for (const { row, column, formula, value } of cells) {
      // The workings of a copy have no results in the file: the program makes them on opening.
      if (formula === undefined || value === undefined) continue;
      formulas += 1;
      const now = shown.get(name)?.[row]?.[column] ?? "";
      const isSame =
        typeof value === "number"
          ? Math.abs(figureOf(now) - value) <= 1e-12 * Math.abs(value)
          : typeof value === "object"
            ? isError(now)
            : now === (typeof value === "boolean" ? String(value).toUpperCase() : value);
      if (!isSame) found.push(`${name}!${row},${column}: ${now}, not ${JSON.stringify(value)}`);
    }
  }
  return { found, formulas };
}

describe.skipIf(!isInstalled && !isRequired)("the sample workbooks in LibreOffice", () => {
  const copies = new Map([
    ...names.map((name) => [name, partnerCopy(name)] as const),
    [partner, sample(partner)],
  ]);
  const shown: ShownFiles = isInstalled
    ? shownBy(
        new Map([
          ...[...copies].map(([name, bytes]) => [name, spoilt(bytes)] as const),
          ["as it is", sample("logbook")],
          ["with a blend", withBlend()],
          ["with a word", partnerCopy("logbook", withWord())],
        ]),
        0,
      )
    : new Map();

  it("is there, or was not asked for", () => {
    expect(isInstalled).toBe(true);
  });

  it.each([...copies.keys()])("work out %s for a partner anew as it stands, to 1e-12", (name) => {
    const copy = copies.get(name) ?? new Uint8Array();
    const { found, formulas } = differences(copy, shown.get(name) ?? new Map());
    expect(found).toEqual([]);
    expect(formulas).toBeGreaterThan(20);
  });

  it.each([
    [
      "the program does not know the function",
      "as it is",
      "No acid value: this program does not know the function, since it has no add-in.",
    ],
    [
      "a reading is no figure",
      "with a word",
      "No acid value: a reading is no figure, or is beyond its limits.",
    ],
  ])("say under Worth that %s", (_, file, sentence) => {
    const rows = shown.get(file)?.get("Titrations");
    expect(rows?.[firstTitration]?.[worth]).toBe(sentence);
  });

  it("say of every batch that its worth is not known, where the add-in is missing", () => {
    const rows = shown.get("with a blend")?.get("Batches") ?? [];
    const head = rows.findIndex((row) => row.includes("Acid value worth"));
    const at = rows[head]?.indexOf("Acid value worth") ?? -1;
    const lots = rows[head]?.indexOf("Lots") ?? -1;
    const batches = rows.slice(head + 1).filter((row) => (row[lots] ?? "") !== "");
    expect(new Set(batches.map((row) => row[at]))).toEqual(
      new Set([
        "No acid value: this program does not know the function, since it has no add-in.",
        "Worth is not known yet: see Blends.",
      ]),
    );
  });

  it("print, every sheet of each", { timeout: longestWait }, () => {
    expect(files.length).toBeGreaterThan(3);
    const pages = printedBy(files.map(sample));
    for (const [at, name] of files.entries()) {
      const sheets = opened(sample(name)).sheets.length;
      expect(pages[at], name).toBeGreaterThanOrEqual(sheets);
    }
  });
});

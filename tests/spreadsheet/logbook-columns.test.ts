/**
 * The old logbook with its new columns as plain formulas, and a partner copy of it with our functions:
 * both come out in LibreOffice as a second implementation says. So do the columns added to logbooks of
 * makers with habits of their own, and what a re-check puts right there; COLUMN_BOOKS sets how many. Where LibreOffice is not installed this is left out, and says so; with
 * REQUIRE_ALL=1 a missing one fails.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { offers, type Spelling } from "../../src/adopt/added-columns/columns-to-add";
import { withBasis } from "../../src/adopt/recognising/basis";
import { mappingFrom, withColumn } from "../../src/adopt/recognising/mapping";
import { recogniseSheet } from "../../src/adopt/recognising/recognise";
import { cellsFromFile, heldCell } from "../../src/adopt/recognising/sheet-cells";
import { shareWorkbook } from "../../src/partner/sharing";
import { type Edit, isFileProblem, openXlsx, patchXlsx, sayFile } from "../../src/xlsx";
import { root } from "../rules/sources-of";
import { strengthColumn } from "../adopt/recheck/old-logbook-key";
import { type Asked, askedOf, fileOf } from "./habit-books";
import { judge, nothingSeen, type Seen } from "./habit-figures";
import { hasLibreOffice, type ShownFiles, shownBy } from "./xlsx/libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const file = new Uint8Array(readFileSync(join(root, "sample-workbooks/old-logbook.xlsx")));
const book = openXlsx(file);
if (isFileProblem(book)) throw new Error(sayFile(book));
const [sheet] = book.sheets;
if (!sheet) throw new Error("no sheet");
const cells = cellsFromFile(book, sheet);
const [guess] = recogniseSheet(cells);
if (!guess) throw new Error("no logbook");
const agreed = withColumn(mappingFrom(guess), strengthColumn, "strength", "g/L");
const mapping = withBasis(withBasis(agreed, "strength", "pure"), "baseCharge", "pure");
const wanted = ["correctedTitre", "acidValue", "ffa", "catalyst"];
const firstColumn = 20;
/** One of each kind: typed, worked out, gallons, a titre left out, a weak titrant. */
const rowsLookedAt = [8, 38, 73, 100, 119, 130, 209];

function withColumns(spelling: Spelling): Uint8Array {
  const added = offers(mapping, cells, spelling).filter(({ id }) => wanted.includes(id));
  const edits = added.flatMap(({ formula }, at) =>
    rowsLookedAt.map((row): Edit => ({
      do: "set-cell",
      sheet: sheet?.name ?? "",
      row: row - 1,
      column: firstColumn + at,
      content: { kind: "formula", formula: formula?.(row) ?? "", result: 0 },
    })),
  );
  const made = patchXlsx(file, edits);
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
}

/** In doubles, from the readings of the row; 90 % of assay and 7 g/L stand above the headings. */
function byHand(row: number): readonly number[] {
  const at = (column: number) => heldCell(cells, row - 1, column).value;
  const titres = [3, 4, 5].map(at).filter((each): each is number => typeof each === "number");
  const net = titres.reduce((sum, each) => sum + each, 0) / titres.length - Number(at(6));
  const acidValue = (56.1 * (Number(at(10)) / 56.1053) * net) / Number(at(9));
  const litres = Number(at(12)) * (at(13) === "imp gal" ? 4.54609 : 1);
  const pure = ((litres * 0.915 * acidValue) / 56.1) * 56.1053 + litres * 7;
  return [net, acidValue, (acidValue * 282) / 561, pure / 0.9];
}

function partnerCopy(bytes: Uint8Array): Uint8Array {
  const shared = shareWorkbook(bytes, { kind: "partner", fileName: "old.xlsx" });
  if (isFileProblem(shared)) throw new Error(sayFile(shared));
  return shared.bytes;
}

const asBid = process.env.COLUMN_BOOKS;
/** Each has something of its own: blanks of 0, one a day or taken off a mean, a sample a titre, an open question. */
const telling = [7, 15, 21, 34, 42, 59, 77, 83];
const seeds =
  asBid === undefined ? telling : Array.from({ length: Number(asBid) }, (_, at) => at + 1);
const inOneFile = 20;

/** Every so many logbooks in two files: with plain formulas, and with our functions made plain for a partner. */
function filesOf(all: readonly Asked[]): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (let at = 0; at * inOneFile < seeds.length; at += 1) {
    const isIn = ({ made }: Asked) => Math.floor(seeds.indexOf(made.seed) / inOneFile) === at;
    const plain = all.filter((each) => isIn(each) && each.kind === "plain");
    const others = all.filter((each) => isIn(each) && each.kind !== "plain");
    files.set(`plain${String(at)}`, fileOf(plain));
    files.set(`others${String(at)}`, partnerCopy(fileOf(others)));
  }
  return files;
}

describe.runIf(isInstalled || isRequired)("new columns of a logbook in LibreOffice", () => {
  const seen: Seen = nothingSeen();
  let shown: ShownFiles = new Map();

  beforeAll(
    async () => {
      const asked: Asked[] = [];
      for (const seed of seeds) asked.push(...(await askedOf(seed)));
      shown = shownBy(
        new Map([
          ["plain", withColumns("plain")],
          ["functions", partnerCopy(withColumns("functions"))],
          ...filesOf(asked),
        ]),
        0,
      );
      const sheets = new Map([...shown.values()].flatMap((file) => [...file]));
      for (const each of asked) judge(each, sheets.get(each.name), seen);
    },
    120_000 + seeds.length * 10_000,
  );

  it("come out right as plain formulas, and in a partner copy of our functions", () => {
    for (const spelling of ["plain", "functions"]) {
      const log = shown.get(spelling)?.get("Oil book");
      for (const row of rowsLookedAt) {
        for (const [column, right] of byHand(row).entries()) {
          const found = log?.[row - 1]?.[firstColumn + column];
          const off = Math.abs(Number(found) / right - 1);
          expect(off, `${spelling}, row ${String(row)}: ${String(found)}`).toBeLessThan(1e-12);
        }
      }
    }
  });

  it("come out right on logbooks of makers with habits, added and put right, or a reason is given", () => {
    const { wrong, ...counted } = seen;
    console.info(`${String(seeds.length)} logbooks: ${JSON.stringify(counted)}`);
    expect(wrong).toEqual([]);
    expect(seen.figures).toBeGreaterThan(seeds.length * 30);
    expect(seen.mended).toBeGreaterThan(seeds.length);
  });
});

/**
 * LibreOffice inserts and deletes the same rows and columns in the same files, and then holds the same:
 * formulas, figures, merges, names, rules, notes, tables, print areas, what charts are drawn from. Both
 * results are told by LibreOffice: its own, and the file made here when it opens that.
 */
import { describe, expect, it } from "vitest";
import { isFileProblem, sayFile, type Workbook } from "../../../src/xlsx";
import { restructured } from "../../../src/xlsx/structure";
import type { LinesAct } from "../../../src/xlsx/structure/act";
import { opened } from "../../xlsx/answers";
import { hasLibreOffice } from "../xlsx/libreoffice";
import { bookMade, Dice, sheetNames } from "./books";
import { toldBy } from "./libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const many = 40;

function drawn(dice: Dice): LinesAct {
  const kind = dice.of(["insert-rows", "delete-rows", "insert-columns", "delete-columns"] as const);
  // LibreOffice puts nothing in before the first line of a sheet with an array formula there
  const [sheet, line, count] = [dice.of(sheetNames), 1 + dice.roll(15), 1 + dice.roll(3)];
  return kind === "insert-rows" || kind === "insert-columns"
    ? { do: kind, sheet, before: line, count }
    : { do: kind, sheet, first: line, count };
}

/** The first act drawn that is not refused; what is refused has tests of its own. */
function done(book: Workbook, seed: number): { act: LinesAct; made: Workbook } {
  const dice = new Dice(seed * 7919 + 1);
  let said = "";
  for (let tries = 0; tries < 40; tries++) {
    const act = drawn(dice);
    const made = restructured(book, act);
    if (!isFileProblem(made)) return { act, made };
    if (made.fields.code !== "cannot-shift") throw new Error(sayFile(made));
    said = sayFile(made);
  }
  throw new Error(said);
}

/** The cell a line is about. */
const placeOf = (line: string): string => line.split("|").slice(1, 4).join("|");

/** How LibreOffice shows a reference that is lost, and one that a file says is. */
const lost = /(?:\$?'?[\w' ]*'?\.)?\$?[A-Z]*\$?#REF!(?:\.?\$?[A-Z#!]*)*\$?\d*/gi;
const plainly = (text: string): string =>
  text.replace(lost, "#REF!").replace("#REF!:#REF!", "#REF!");

/**
 * What LibreOffice does of its own, and the spreadsheet program whose format this is does not:
 * - a range of sheets is lost as soon as its cell is deleted on the first or last of them, and is left alone otherwise;
 * - rules and choices count as the look of a cell, which new lines have from the line before them;
 */
function plain(line: string, { do: kind, sheet, ...act }: LinesAct): string[] {
  const first = "before" in act ? act.before : undefined;
  const isNew = (row: number, column: number): boolean => {
    const at = kind.endsWith("rows") ? row : column;
    return first !== undefined && at >= first && at < first + act.count;
  };
  const [what = "", title, ...rest] = line.split("|");
  if (what === "choice" && title === sheet && isNew(Number(rest[0]), Number(rest[1]))) return [];
  if (what !== "rule") return [plainly(line)];
  const [left = 0, top = 0, right = 0, bottom = 0] = (rest[0] ?? "").split(",").map(Number);
  const cells: string[] = [];
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) {
      if (title === sheet && isNew(row, column)) continue;
      cells.push([what, title, row, column, plainly(rest[1] ?? "")].join("|"));
    }
  }
  return cells;
}

describe.skipIf(!isInstalled && !isRequired)("LibreOffice", () => {
  const books = Array.from({ length: many }, (_, seed) => bookMade(seed));
  const acts = books.map((bytes, seed) => done(opened(bytes), seed));
  const told = isInstalled
    ? toldBy(
        acts.flatMap(({ act, made }, index) => [
          { bytes: books[index] ?? new Uint8Array(), act },
          { bytes: made.file.bytes },
        ]),
      )
    : [];

  it("is there, or was not asked for", () => {
    expect(isInstalled).toBe(true);
  });

  it.each(acts.map(({ act }, index) => [JSON.stringify(act), index] as const))(
    "holds the same after %s in book %d",
    (_, index) => {
      const { act } = acts[index] ?? {};
      const [own = [], ours = []] = [told[2 * index], told[2 * index + 1]];
      if (!act) throw new Error("no act");
      const leftOut = new Set(own.filter((line) => line.includes("$#REF!.")).map(placeOf));
      const said = (lines: readonly string[]): string[] =>
        lines
          .filter((line) => !leftOut.has(placeOf(line)))
          .flatMap((line) => plain(line, act))
          .sort();
      expect(ours.length).toBeGreaterThan(100);
      expect(said(ours)).toEqual(said(own));
    },
  );
});

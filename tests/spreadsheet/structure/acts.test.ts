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

const many = 44;

function drawn(dice: Dice): LinesAct {
  const kind = dice.of(["insert-rows", "delete-rows", "insert-columns", "delete-columns"] as const);
  const [sheet, line, count] = [dice.of(sheetNames), dice.roll(16), 1 + dice.roll(3)];
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
      const [own, ours] = [told[2 * index], told[2 * index + 1]];
      expect(ours?.length).toBeGreaterThan(100);
      expect([...(ours ?? [])].sort()).toEqual([...(own ?? [])].sort());
    },
  );
});

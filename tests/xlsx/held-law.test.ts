/** What an act hands back is read of the parts that changed alone: it must be what the whole file says. */
import { describe, expect, it } from "vitest";
import {
  type Edit,
  isFileProblem,
  patchedXlsx,
  restructured,
  type StructuralAct,
  type Workbook,
} from "../../src/xlsx";
import { bookMade, Dice } from "../spreadsheet/structure/books";
import { times } from "../thorough";
import { opened } from "./answers";
import { made } from "./files";

const seeds = Array.from({ length: times(8) }, (_, index) => 300 + index);

/** All that a workbook says, apart from the bytes it says it in. */
const said = (book: Workbook) => ({ ...book, file: "" });

const typed = (dice: Dice, sheet: string): Edit => ({
  do: "set-cell",
  sheet,
  row: dice.roll(30),
  column: dice.roll(8),
  content: { kind: "value", value: dice.of([2.5, "= seven", "Ferry", true]) },
});

function act(dice: Dice, sheet: string): StructuralAct {
  const count = 1 + dice.roll(3);
  const lines = dice.of(["rows", "columns"] as const);
  return dice.of<StructuralAct>([
    { do: `insert-${lines}`, sheet, before: dice.roll(20), count },
    { do: `delete-${lines}`, sheet, first: dice.roll(20), count },
    { do: "rename-sheet", sheet, name: dice.of(["Quay 1", "a-b", "Kai's"]) },
    { do: "move-sheet", sheet, to: dice.roll(2) },
  ]);
}

/** Six acts and edits; how many of them were carried out. */
function carriedOut(first: Workbook, dice: Dice): number {
  let book = first;
  let many = 0;
  for (let step = 0; step < 6; step += 1) {
    const sheet = dice.of(book.sheets.filter(({ kind }) => kind === "cells")).name;
    const next =
      dice.roll(2) === 0
        ? restructured(book, act(dice, sheet))
        : patchedXlsx(book, [typed(dice, sheet), typed(dice, sheet)]);
    if (isFileProblem(next)) continue;
    many += 1;
    expect(said(next)).toEqual(said(opened(next.file.bytes)));
    book = next;
  }
  return many;
}

describe("what a workbook is held as after an act", () => {
  it.each(seeds)("is what its file says when it is opened anew: seed %i", (seed) => {
    expect(carriedOut(opened(bookMade(seed)), new Dice(seed))).toBeGreaterThan(1);
  });

  it.each(["charts", "dynamic", "office", "threaded", "tidy"])(
    "is what its file says when it is opened anew: %s",
    (name) => {
      expect(carriedOut(opened(made(name)), new Dice(7))).toBeGreaterThan(1);
    },
  );
});

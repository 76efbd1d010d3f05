/** The checked inputs and answers out of files, whichever form the calls have in them. */
import { describe, expect, it } from "vitest";
import type { CellPlace } from "../../src/sheet/area";
import { newXlsx } from "../../src/xlsx";
import { isFileProblem, sayFile } from "../../src/xlsx";
import { built, isOfFigures, isRight, type Seen, type Vector } from "../vectors";
import { asDamaged, asProgramSaves } from "../xlsx/program-form";
import { inGrid } from "./file";
import { rowsEach, vectorBook } from "./vectors";

function file(): Uint8Array {
  const bytes = newXlsx(vectorBook(built));
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return bytes;
}

type ValueAt = (place: CellPlace) => unknown;

/** The answer as it stands in the cells, in the shape that is expected. */
function seenAt(row: number, vector: Vector, at: ValueAt): Seen {
  const value = (down: number, across: number): unknown =>
    at({ sheet: "Answers", row: row + down, column: across }) ?? "";
  const first = value(0, 0);
  if (typeof first === "object" && first !== null && "basicValue" in first) {
    return { error: String(first.basicValue) };
  }
  if (isOfFigures(vector)) {
    return { value: Array.from({ length: rowsEach }, (_, down) => ["", value(down, 1)]) };
  }
  if (!Array.isArray(vector.expect)) return { value: first };
  const rows = vector.expect as unknown[][];
  return { value: rows.map((cells, down) => cells.map((_, across) => value(down, across))) };
}

const forms: readonly (readonly [string, (bytes: Uint8Array) => Uint8Array])[] = [
  ["plainly, as files of ours hold it", (bytes) => bytes],
  ["as an array with a mark, as the spreadsheet program saves it", asProgramSaves],
  ["behind a numbered link, as another add-in damages it", (bytes) => asDamaged(bytes, "[2]!")],
  ["behind the path of another add-in's file", (bytes) => asDamaged(bytes, "'C:/Users/a/X.xla'!")],
];

describe("every checked answer", () => {
  it.each(forms)("is right from a file that holds its call %s", async (_, form) => {
    await inGrid(form(file()), ({ grid }) => {
      const wrong = built.flatMap((vector, index) => {
        const seen = seenAt(index * rowsEach, vector, (place) => grid.value(place));
        return isRight(seen, vector) ? [] : [`${vector.fn}: ${vector.why}`];
      });
      expect(wrong).toEqual([]);
    });
  });
});

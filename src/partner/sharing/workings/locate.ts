/** Finds the cells that a reference means, in the formula it stands in. */
import { columnLetters } from "../../../sheet/cell-name";
import { isProblem } from "../../../core/problem/problem";
import { readFormula } from "../../../sheet/formula/read";
import { sheetOf, targetOf } from "../../../sheet/formula/reference";
import type { Reference } from "../../../sheet/formula/tree";
import type { KnownName } from "../facts";
import type { Operand } from "./standing";
import { type Around, fixedBlock, type Located, single } from "./located";
import { noTwin } from "../no-twin";
import { cornerOf, piecesIn, restorer } from "../pieces";
import { sheetPrefix } from "../../../sheet/sheet-prefix";
import { locateInTable } from "../parts/table-cells";

const writtenPrefix = (text: string): string => text.slice(0, text.lastIndexOf("!") + 1);

/** One cell, or a block between two. */
function locateCells({ text }: Reference, { home, pieces, ownRow }: Around): Located {
  const written = writtenPrefix(text);
  const indexes = piecesIn(text);
  const firstIndex = indexes[0] ?? 0;
  const lastIndex = indexes.at(-1) ?? 0;
  const corners = (given: readonly string[]) =>
    [cornerOf(given[firstIndex] ?? ""), cornerOf(given[lastIndex] ?? "")] as const;
  const [from, to] = corners(pieces);
  const moves = [from, to].some(({ columnDollar, rowDollar }) => !columnDollar || !rowDollar);
  if (home.isFixed && moves) noTwin("it moves with the cell that uses it");
  const isOnOwnRow = from.row === home.row && to.row === home.row;
  if (!written && isOnOwnRow && !from.rowDollar) ownRow.push({ piece: firstIndex });
  const prefix: Operand = (instance, mode) =>
    written || (mode === "workings" ? sheetPrefix(instance.home.sheet) : "");
  const asWritten = restorer(text.slice(written.length));
  return {
    rows: Math.abs(from.row - to.row) + 1,
    columns: Math.abs(from.column - to.column) + 1,
    whole: (instance, mode) => prefix(instance, mode) + asWritten(instance.pieces),
    cell: (row, column) => (instance, mode) => {
      if (firstIndex === lastIndex) {
        return prefix(instance, mode) + (instance.pieces[firstIndex] ?? "");
      }
      const [one, other] = corners(instance.pieces);
      const letters = columnLetters(Math.min(one.column, other.column) + column);
      const line = String(Math.min(one.row, other.row) + row + 1);
      return prefix(instance, mode) + one.columnDollar + letters + one.rowDollar + line;
    },
  };
}

/** Whole columns or whole rows. */
function locateLines(reference: Reference, { home }: Around): Located {
  const target = targetOf(reference);
  if (target.kind !== "cells") return noTwin(`${reference.text} cannot be found`);
  const written = writtenPrefix(reference.text);
  if (home.isFixed && !reference.text.includes("$")) noTwin("it moves with the cell that uses it");
  const sheet = sheetOf(reference)?.first ?? home.sheet;
  return fixedBlock(sheet, target.edges, (instance, mode) =>
    written || mode === "here" ? reference.text : sheetPrefix(instance.home.sheet) + reference.text,
  );
}

const nameText =
  ({ name, sheet }: KnownName, reference: string): Operand =>
  (_, mode) =>
    mode === "workings" && sheet !== undefined && !reference.includes("!")
      ? sheetPrefix(sheet) + name
      : reference;

/** A name for cells, or for a figure. */
function locateName(reference: Reference, { facts, home }: Around): Located {
  const target = targetOf(reference);
  const name = target.kind === "name" ? target.name : reference.text;
  const known = facts.name(name, sheetOf(reference)?.first ?? home.sheet);
  if (!known) return noTwin(`there is no name ${name} in the workbook`);
  const read = readFormula(known.text);
  if (isProblem(read)) return noTwin(`the name ${name} cannot be read`);
  const whole = nameText(known, reference.text);
  const { tree } = read;
  if (tree.kind !== "reference") return { rows: 1, columns: 1, whole, cell: () => whole };
  const meant = targetOf(tree);
  const sheet = sheetOf(tree)?.first;
  if (meant.kind !== "cells" || sheet === undefined) {
    return noTwin(`the name ${name} does not stand for cells of one sheet`);
  }
  return fixedBlock(sheet, meant.edges, whole);
}

export function locate(reference: Reference, around: Around): Located {
  if (sheetOf(reference)?.last !== undefined) noTwin("it refers to several sheets at once");
  switch (reference.shape) {
    case "cell":
    case "block":
      return locateCells(reference, around);
    case "lines":
      return locateLines(reference, around);
    case "name":
      return locateName(reference, around);
    case "structured":
      return locateInTable(reference, around);
    case "lost":
      return single(reference.text);
  }
}

/**
 * A sheet whose rows or cells do not stand in rising order, put in order: some programs write them as they
 * come, and all read them. Shared formulas, array answers and what patches a sheet go by the order.
 */
import type { Package } from "../package/package";
import { attribute } from "../xml/scan";
import { type RawCell, type RawRow, scanSheet, type SheetVisitor } from "./sheet-scan";

interface Piece {
  readonly at: number;
  readonly start: number;
  readonly end: number;
}

interface Row extends Piece {
  readonly cells: Piece[];
}

class Pieces implements SheetVisitor {
  readonly rows: Row[] = [];
  private cells: Piece[] = [];

  /** Each says where it stands; otherwise it goes by the one before. */
  isNamed = true;

  row({ tag }: RawRow): void {
    this.cells = [];
    this.isNamed &&= attribute(tag, "r") !== undefined;
  }

  cell({ column, tag, end }: RawCell): void {
    this.isNamed &&= attribute(tag, "r") !== undefined;
    this.cells.push({ at: column, start: tag.start, end });
  }

  rowEnd({ row, tag }: RawRow, _: number, end: number): void {
    this.rows.push({ at: row, start: tag.start, end, cells: this.cells });
  }
}

const isRepeated = (pieces: readonly Piece[]): boolean =>
  new Set(pieces.map(({ at }) => at)).size < pieces.length;

/** The pieces in order, each gap between them where it was; all else of the text as it stands. */
function sorted(text: string, span: Omit<Piece, "at">, pieces: readonly Row[] | readonly Piece[]) {
  const rising = [...pieces].sort((a, b) => a.at - b.at);
  let made = "";
  let from = span.start;
  for (const [place, { start, end }] of pieces.entries()) {
    const now = rising[place] as Piece | Row;
    made += text.slice(from, start);
    made += "cells" in now ? sorted(text, now, now.cells) : text.slice(now.start, now.end);
    from = end;
  }
  return made + text.slice(from, span.end);
}

const order = "rows and cells stand in rising order";

/** Whoever reads a sheet that stands in order says so, and nobody looks again. */
export const keepInOrder = (file: Package, part: string): void => file.keep(part, order, true);

/** The text of a sheet's part with its rows and cells in rising order; as it is where they have none. */
export function orderedText(file: Package, part: string): string {
  const text = file.need(part);
  return file.known(part, order) === true ? text : (risingOrder(part, text) ?? text);
}

/** Undefined where a row or a cell stands there twice: nobody can say which one counts. */
export function risingOrder(part: string, text: string): string | undefined {
  const pieces = new Pieces();
  const { isOrdered } = scanSheet(part, text, pieces);
  if (isOrdered) return text;
  const { rows, isNamed } = pieces;
  if (!isNamed) return undefined;
  if (isRepeated(rows) || rows.some(({ cells }) => isRepeated(cells))) return undefined;
  return sorted(text, { start: 0, end: text.length }, rows);
}

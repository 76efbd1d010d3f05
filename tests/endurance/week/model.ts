/** A logbook as somebody who keeps it on paper would know it: rows of one table, and cells that point at them. */

export interface Line {
  /** Undefined where the row is not begun. */
  lot: string | undefined;
  titre: number | undefined;
}

/** Rows from one to another, both counted; undefined once all of them are gone. */
export type Span = { readonly from: number; readonly to: number } | undefined;

/** A row goes further down when rows come before it. */
const pushed = (row: number, before: number, count: number): number =>
  row >= before ? row + count : row;

const spanAfterInsert = (span: Span, before: number, count: number): Span =>
  span && { from: pushed(span.from, before, count), to: pushed(span.to, before, count) };

/** By looking at each row of it: what is left moves up. */
function spanAfterDelete(span: Span, first: number, count: number): Span {
  if (!span) return undefined;
  const left: number[] = [];
  for (let row = span.from; row <= span.to; row += 1) {
    if (row < first) left.push(row);
    else if (row >= first + count) left.push(row - count);
  }
  return left.length === 0
    ? undefined
    : { from: left[0] as number, to: left[left.length - 1] as number };
}

export class Model {
  /** What the sheet with the table is called now. */
  sheet = "Titrations";
  /** In their order. */
  sheets: string[] = [];
  /** The row of the headings. */
  top = 2;
  readonly lines: Line[] = [{ lot: undefined, titre: undefined }];
  /** Rows put in above the table, that may be taken out again. */
  above = 0;
  /** Columns put in before the notes. */
  before = 0;
  /** Each note points at one cell, in the sheet of notes, one under the other. */
  readonly notes: Span[] = [];
  /** Cells that one sum on the sheet of notes adds up. */
  sum: Span;

  insert(before: number, count: number): void {
    this.notes.forEach((span, at) => (this.notes[at] = spanAfterInsert(span, before, count)));
    this.sum = spanAfterInsert(this.sum, before, count);
    if (before <= this.top) {
      this.top += count;
      this.above += count;
      return;
    }
    const empty = Array.from({ length: count }, () => ({ lot: undefined, titre: undefined }));
    this.lines.splice(before - this.top - 1, 0, ...empty);
  }

  delete(first: number, count: number): void {
    this.notes.forEach((span, at) => (this.notes[at] = spanAfterDelete(span, first, count)));
    this.sum = spanAfterDelete(this.sum, first, count);
    if (first < this.top) {
      this.top -= count;
      this.above -= count;
      return;
    }
    this.lines.splice(first - this.top - 1, count);
  }
}

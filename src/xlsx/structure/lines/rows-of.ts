/**
 * The rows of the sheet, read once: what of them moves, what goes, and what stands beside the new lines.
 * Formulas are left to formula-cells.ts.
 */
import type { Replacement } from "../../../sheet/formula/splice";
import { cellName } from "../../../sheet/cell-name";
import type { RawCell, RawRow, SheetVisitor } from "../../read/sheet-scan";
import { attribute } from "../../xml/scan";
import type { FormulaCell } from "./formula-cells";
import { tagOf, without } from "./in-place";
import type { Lines } from "./lines";

/** A cell beside the new lines, and how it looks. */
export interface Beside {
  readonly line: number;
  readonly style: number;
}

export interface Crossing {
  /** The line across: a column where rows are put in. */
  readonly before: Beside[];
  readonly after: Beside[];
}

export class RowsOf implements SheetVisitor {
  readonly changes: Replacement[] = [];
  readonly formulas: FormulaCell[] = [];
  /** The tags of the rows on both sides of new rows. */
  readonly tags: { before?: RawRow; after?: RawRow } = {};
  readonly cells: Crossing = { before: [], after: [] };
  /** Where, in the part, new rows go; undefined: after all others. */
  newRowsAt: number | undefined;
  /** By row, where a new cell of a new column goes. */
  readonly newCellsAt = new Map<number, number>();
  /** A cell that would be pushed off the end of the sheet though it holds something. */
  pushedOut: RawCell | undefined;
  private isCellAfter = false;

  constructor(
    private readonly part: string,
    private readonly lines: Lines,
  ) {}

  private get byRows(): boolean {
    return this.lines.axis === "row";
  }

  row(row: RawRow): void {
    this.isCellAfter = false;
    if (!this.byRows) return;
    const { lines } = this;
    if (row.row === lines.at - 1) this.tags.before = row;
    if (row.row === lines.at) this.tags.after = row;
    if (row.row >= lines.at) this.newRowsAt ??= row.tag.start;
    const now = lines.line(row.row);
    if (now === undefined || now === row.row) return;
    this.changes.push(...tagOf(this.part, row.tag, { r: String(now + 1) }));
  }

  cell(cell: RawCell): void {
    const { lines, byRows } = this;
    const [line, across] = byRows ? [cell.row, cell.column] : [cell.column, cell.row];
    if (line === lines.at - 1) this.cells.before.push({ line: across, style: cell.style });
    if (line === lines.at) this.cells.after.push({ line: across, style: cell.style });
    if (cell.formula) this.formulas.push(cell as FormulaCell);
    if (!byRows && line >= lines.at && !this.isCellAfter) {
      this.isCellAfter = true;
      this.newCellsAt.set(cell.row, cell.tag.start);
    }
    const now = lines.line(line);
    if (now === undefined) {
      const isFull = cell.value !== undefined || cell.inline !== undefined || cell.formula;
      if (lines.isInserting && isFull) this.pushedOut ??= cell;
      if (!byRows) this.changes.push(without({ ...cell.tag, closeStart: 0, end: cell.end }));
      return;
    }
    if (now === line) return;
    const name = byRows ? cellName(now, cell.column) : cellName(cell.row, now);
    this.changes.push(...tagOf(this.part, cell.tag, { r: name }));
  }

  rowEnd(row: RawRow, closeStart: number, end: number): void {
    const { lines } = this;
    if (this.byRows) {
      if (lines.line(row.row) !== undefined) return;
      // with all that is in it: what was to be changed there goes too
      const { start } = row.tag;
      while ((this.changes.at(-1)?.start ?? -1) >= start) this.changes.pop();
      this.changes.push({ start, end, text: "" });
      return;
    }
    if (!this.newCellsAt.has(row.row)) this.newCellsAt.set(row.row, closeStart);
    // which columns a row takes is said to save time, and need not be
    if (attribute(row.tag, "spans") !== undefined) {
      this.changes.push(...tagOf(this.part, row.tag, { spans: undefined }));
    }
  }
}

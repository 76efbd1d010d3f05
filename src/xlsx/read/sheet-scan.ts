/**
 * One pass over a sheet: its cells one by one as they stand in the file, and everything else as a
 * tree without them. What reads a sheet and what patches it both go by this.
 */
import { cellName } from "../../sheet/cell-name";
import { isOnSheet, readCellName } from "../cell-address";
import { limits } from "../limits";
import { refuse } from "../problem";
import { attribute, count, type Listener, type OpenTag, scanXml } from "../xml/scan";
import { type Node, TreeBuilder } from "../xml/tree";

export interface RawFormula {
  readonly tag: OpenTag;
  text: string;
  end: number;
}

export interface RawCell {
  readonly tag: OpenTag;
  readonly row: number;
  readonly column: number;
  /** n, s, str, inlineStr, b, e, d. */
  readonly type: string;
  readonly style: number;
  formula: RawFormula | undefined;
  /** The text of <v>, and where the element stands. */
  value: string | undefined;
  valueSpan: readonly [number, number] | undefined;
  /** The text of <is>, phonetic guides left out. */
  inline: string | undefined;
  end: number;
}

export interface RawRow {
  readonly tag: OpenTag;
  readonly row: number;
}

export interface SheetVisitor {
  row?(row: RawRow): void;
  cell(cell: RawCell): void;
  rowEnd?(row: RawRow, closeStart: number, end: number): void;
}

/** How much may still be read, in all sheets together. */
export interface Budget {
  cells: number;
  /** Characters of formulas that are written once in the file and stand in many cells. */
  sharedText: number;
}

export const fullBudget = (): Budget => ({
  cells: limits.cells,
  sharedText: limits.unpackedBytes,
});

type Target = "formula" | "value" | "inline" | undefined;

class SheetScanner implements Listener {
  readonly frame: TreeBuilder;
  isOrdered = true;
  private isInData = false;
  private row: RawRow | undefined;
  private lastRow = -1;
  private cell: RawCell | undefined;
  private lastColumn = -1;
  private target: Target;
  private phonetic = 0;

  constructor(
    private readonly part: string,
    private readonly visitor: SheetVisitor,
    private readonly budget: Budget,
  ) {
    this.frame = new TreeBuilder(part);
  }

  private damaged(detail: string): never {
    return refuse({ code: "damaged", part: this.part, detail });
  }

  open(tag: OpenTag, depth: number): void {
    if (!this.isInData) {
      this.frame.open();
      this.isInData = depth === 2 && tag.local === "sheetData";
    } else if (depth === 3 && tag.local === "row") this.openRow(tag);
    else if (depth === 4 && tag.local === "c" && this.row) this.openCell(tag, this.row);
    else if (this.cell) this.openInCell(tag, depth, this.cell);
  }

  private openRow(tag: OpenTag): void {
    const row = attribute(tag, "r") === undefined ? this.lastRow + 1 : count(tag, "r") - 1;
    if (!isOnSheet(row, 0)) this.damaged("a row has no sound number");
    if (row <= this.lastRow) this.isOrdered = false;
    this.lastRow = row;
    this.lastColumn = -1;
    this.row = { tag, row };
    this.visitor.row?.(this.row);
  }

  private openCell(tag: OpenTag, { row }: RawRow): void {
    const name = attribute(tag, "r");
    const place = name === undefined ? { row, column: this.lastColumn + 1 } : readCellName(name);
    if (place?.row !== row || !isOnSheet(row, place.column)) {
      return this.damaged(`a cell has no sound address in row ${String(row + 1)}`);
    }
    const { column } = place;
    if (column <= this.lastColumn) this.isOrdered = false;
    this.lastColumn = column;
    this.budget.cells -= 1;
    if (this.budget.cells < 0) refuse({ code: "too-many-cells" });
    this.cell = {
      tag,
      row,
      column,
      type: attribute(tag, "t") ?? "n",
      style: count(tag, "s"),
      formula: undefined,
      value: undefined,
      valueSpan: undefined,
      inline: undefined,
      end: 0,
    };
  }

  private openInCell(tag: OpenTag, depth: number, cell: RawCell): void {
    if (depth === 5) {
      if (tag.local === "f") {
        cell.formula = { tag, text: "", end: 0 };
        this.target = "formula";
      } else if (tag.local === "v") {
        cell.value = "";
        this.target = "value";
      } else if (tag.local === "is") cell.inline = "";
    } else if (tag.local === "rPh") this.phonetic += 1;
    else if (tag.local === "t" && cell.inline !== undefined && this.phonetic === 0) {
      this.target = "inline";
    }
  }

  close(tag: OpenTag, depth: number, closeStart: number, end: number): void {
    if (this.isInData && depth > 2) return this.closeInData(tag, depth, closeStart, end);
    this.isInData = false;
    this.frame.close(tag, depth, closeStart, end);
  }

  private closeInData(tag: OpenTag, depth: number, closeStart: number, end: number): void {
    const { cell, row } = this;
    this.target = undefined;
    if (tag.local === "rPh" && depth > 5) this.phonetic -= 1;
    if (depth === 5 && cell) {
      if (tag.local === "v") cell.valueSpan = [tag.start, end];
      if (tag.local === "f" && cell.formula) cell.formula.end = end;
    } else if (depth === 4 && cell) {
      cell.end = end;
      this.cell = undefined;
      this.phonetic = 0;
      this.visitor.cell(cell);
    } else if (depth === 3 && row) {
      this.row = undefined;
      this.visitor.rowEnd?.(row, closeStart, end);
    }
  }

  text(found: string): void {
    const { cell } = this;
    if (!this.isInData) this.frame.text(found);
    else if (!cell) return;
    else if (this.target === "value") cell.value += found;
    else if (this.target === "inline") cell.inline += found;
    else if (this.target === "formula" && cell.formula) cell.formula.text += found;
  }
}

export interface Scanned {
  /** The sheet's element, its rows left out. */
  readonly frame: Node;
  /** Rows and cells stand in rising order. */
  readonly isOrdered: boolean;
}

export function scanSheet(
  part: string,
  text: string,
  visitor: SheetVisitor,
  budget: Budget = fullBudget(),
): Scanned {
  const scanner = new SheetScanner(part, visitor, budget);
  scanXml(part, text, scanner);
  return { frame: scanner.frame.root, isOrdered: scanner.isOrdered };
}

export const rawName = ({ row, column }: RawCell): string => cellName(row, column);

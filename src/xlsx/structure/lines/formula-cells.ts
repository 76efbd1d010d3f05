/**
 * The formulas of a sheet's cells, rewritten: plain ones, those over an area, what-if tables, and those
 * that many cells share. A shared one is written out for each of its cells where moving its text would
 * no longer say the same in all of them.
 */
import type { Replacement } from "../../../sheet/formula/splice";
import { areaName, cellName } from "../../../sheet/cell-name";
import { named, readArea, readCellName } from "../../cell-address";
import { SharedFormula } from "../../formulas/shared";
import { refuse } from "../../problem";
import type { RawCell, RawFormula } from "../../read/sheet-scan";
import { escapeText } from "../../xml/escape";
import { attribute } from "../../xml/scan";
import { prefixed, withAttribute } from "../../xml/tag";
import { isSameSheet } from "../sheets/in-formula";
import { tagOf } from "./in-place";
import type { Lines } from "./lines";
import { movedFormula } from "./moved-formula";

export type FormulaCell = RawCell & { readonly formula: RawFormula };

interface Sharing {
  readonly first: FormulaCell;
  readonly shared: SharedFormula;
  readonly cells: FormulaCell[];
}

/** Those that share a formula, by the cell that holds its text; all others apart. */
function sorted(cells: readonly FormulaCell[]) {
  const alone: FormulaCell[] = [];
  const groups: Sharing[] = [];
  const open = new Map<string, Sharing>();
  for (const cell of cells) {
    const { tag, text } = cell.formula;
    if (attribute(tag, "t") !== "shared") {
      alone.push(cell);
      continue;
    }
    const index = attribute(tag, "si") ?? "";
    const known = open.get(index);
    const isFirst = text !== "" && (known === undefined || attribute(tag, "ref") !== undefined);
    if (isFirst) {
      const shared = new SharedFormula(text, cell.row, cell.column);
      const group = { first: cell, shared, cells: [cell] };
      open.set(index, group);
      groups.push(group);
    } else known?.cells.push(cell);
  }
  return { alone, groups };
}

export class FormulaCells {
  private readonly isMoving: boolean;
  /** A column has its formula in every row. */
  private readonly movedTexts = new Map<string, string>();

  constructor(
    private readonly part: string,
    private readonly sheet: string,
    private readonly lines: Lines,
  ) {
    this.isMoving = isSameSheet(sheet, lines.sheet);
  }

  private place({ row, column }: RawCell) {
    if (!this.isMoving) return { row, column };
    const { axis } = this.lines;
    const now = this.lines.line(axis === "row" ? row : column);
    return now === undefined
      ? undefined
      : axis === "row"
        ? { row: now, column }
        : { row, column: now };
  }

  private moved(formula: string, cell: RawCell): string {
    const known = this.movedTexts.get(formula);
    const now = known ?? movedFormula(formula, this.sheet, this.lines);
    if (now !== undefined) {
      this.movedTexts.set(formula, now);
      return now;
    }
    const place = named(this.sheet, cell.row, cell.column);
    return refuse({
      code: "cannot-shift",
      sheet: this.sheet,
      place,
      trouble: "unreadable-formula",
    });
  }

  private content({ formula: { tag, end } }: FormulaCell, now: string): Replacement {
    const start = tag.openEnd;
    // the tag of a cell without a result begins where that of its formula ends
    return { start, end: this.part.lastIndexOf("</", end - 1), text: escapeText(now) };
  }

  /** What answers over an area is taken along whole, or not at all. */
  private refuseCut({ formula: { tag } }: FormulaCell): void {
    const kind = attribute(tag, "t");
    const ref = attribute(tag, "ref") ?? "";
    const area = kind === "array" || kind === "dataTable" ? readArea(ref) : undefined;
    if (!area || !this.isMoving) return;
    const [first, many] =
      this.lines.axis === "row" ? [area.row, area.rows] : [area.column, area.columns];
    if (!this.lines.cuts(first, first + many - 1)) return;
    refuse({ code: "cannot-shift", sheet: this.sheet, place: ref, trouble: "cuts-array" });
  }

  /** The area that an array formula, a what-if table or a shared formula is over. */
  private area(cell: FormulaCell): Record<string, string> {
    const area = readArea(attribute(cell.formula.tag, "ref") ?? "");
    const now = area && this.isMoving ? this.lines.area(area) : undefined;
    return area && now && areaName(now) !== areaName(area) ? { ref: areaName(now) } : {};
  }

  /** The cells a what-if table puts its values into; one that goes is said to be gone. */
  private inputs(cell: FormulaCell): Record<string, string> {
    const changed: Record<string, string> = {};
    if (!this.isMoving) return changed;
    for (const [name, gone] of [
      ["r1", "del1"],
      ["r2", "del2"],
    ] as const) {
      const place = readCellName(attribute(cell.formula.tag, name) ?? "");
      if (!place) continue;
      const now = this.lines.area({ ...place, rows: 1, columns: 1 });
      if (!now) changed[gone] = "1";
      else changed[name] = cellName(now.row, now.column);
    }
    return changed;
  }

  private alone(cell: FormulaCell): Replacement[] {
    const { tag, text } = cell.formula;
    const kind = attribute(tag, "t");
    const isTable = kind === "dataTable";
    const area = kind === "array" || isTable ? this.area(cell) : {};
    const changed = { ...area, ...(isTable ? this.inputs(cell) : {}) };
    const now = text === "" || isTable ? text : this.moved(text, cell);
    return [...tagOf(this.part, tag, changed), ...(now === text ? [] : [this.content(cell, now)])];
  }

  private ownText(cell: FormulaCell, now: string): Replacement {
    const { tag, end } = cell.formula;
    let open = this.part.slice(tag.start, tag.openEnd);
    for (const name of ["t", "ref", "si"]) open = withAttribute(open, name, undefined);
    const start = open.replace(/\s*\/?>$/, "");
    const close = `</${prefixed(tag.prefix, "f")}>`;
    return { start: tag.start, end, text: `${start}>${escapeText(now)}${close}` };
  }

  private group({ first, shared, cells }: Sharing): Replacement[] {
    const now = cells.flatMap((cell) => {
      const place = this.place(cell);
      if (!place) return [];
      return [{ cell, place, text: this.moved(shared.at(cell.row, cell.column), cell) }];
    });
    const [leader] = now;
    if (!leader) return [];
    const again = new SharedFormula(leader.text, leader.place.row, leader.place.column);
    const isShared =
      leader.cell === first &&
      now.every(({ place, text }) => again.at(place.row, place.column) === text);
    if (!isShared) return now.map(({ cell, text }) => this.ownText(cell, text));
    return [
      ...tagOf(this.part, first.formula.tag, this.area(first)),
      ...(leader.text === first.formula.text ? [] : [this.content(first, leader.text)]),
    ];
  }

  changes(cells: readonly FormulaCell[]): Replacement[] {
    const { alone, groups } = sorted(cells);
    for (const cell of alone) this.refuseCut(cell);
    return [
      ...alone.filter((cell) => this.place(cell)).flatMap((cell) => this.alone(cell)),
      ...groups.flatMap((group) => this.group(group)),
    ];
  }
}

/**
 * The cells of a sheet changed, in the pass that reads them: each wanted cell is cut in where it
 * belongs, between what stays as it is.
 */
import { areaName, cellName } from "../../sheet/cell-name";
import type { Replacement } from "../../sheet/formula/splice";
import { named } from "../cell-address";
import { refuse } from "../problem";
import type { RawCell, RawRow, SheetVisitor } from "../read/sheet-scan";
import { count, flag } from "../xml/scan";
import { inserting, unclosed } from "../xml/insert";
import { prefixed, withAttribute } from "../xml/tag";
import { type CellMarks, newCell, redressed, withOwnFormula, withResult } from "./cell-xml";
import type { Dress } from "./edits";
import { type Height, withHeight, withHidden } from "../xml/row-tag";
import { isArrayFormula, Leaning } from "./leaning";
import { keepsFormula, type StoredValue, type Wanted, type WantedCells } from "./wanted";

export interface SheetContext {
  readonly sheet: string;
  readonly text: string;
  readonly wanted: WantedCells;
  /** In points, by row. */
  readonly heights: ReadonlyMap<number, Height>;
  /** Of rows of a filter: whether they show. */
  readonly hidden: ReadonlyMap<number, boolean>;
  readonly dynamicMark: number | undefined;
  /** The style of a column's empty cells. */
  columnStyle(column: number): number;
  dressed(style: number, dress: Dress): number;
  formatOf(style: number): string;
}

const dateFormat = "yyyy-mm-dd";

/** A row that is not there yet has the prefix of the rows' element. */
const prefixOf = ({ tag }: RawRow): string => tag.prefix;

export class SheetCells implements SheetVisitor {
  readonly replacements: Replacement[] = [];
  /** Cells whose formula went or became another kind: the order of calculation must forget them. */
  readonly droppedFormulas: string[] = [];
  private readonly leaning = new Leaning();
  private readonly rows: readonly number[];
  private nextRow = 0;
  /** Of the row being read: what is wanted in it, and how much of that is done. */
  private inRow: readonly Wanted[] = [];
  private done = 0;
  private rowStyle = 0;

  constructor(private readonly context: SheetContext) {
    const { wanted, heights } = context;
    const rows = new Set([...wanted.rowNumbers(), ...heights.keys()]);
    this.rows = [...rows].sort((a, b) => a - b);
  }

  row(raw: RawRow): void {
    const above = this.rowsBefore(raw.row, prefixOf(raw));
    if (above !== "") this.replacements.push(inserting(raw.tag.start, above));
    const isWanted = this.rows[this.nextRow] === raw.row;
    this.inRow = isWanted ? this.context.wanted.inRow(raw.row) : [];
    if (isWanted) this.nextRow += 1;
    this.done = 0;
    this.rowStyle = flag(raw.tag, "customFormat") ? count(raw.tag, "s") : 0;
  }

  cell(raw: RawCell): void {
    const left = this.cellsBefore(raw.column, raw.tag.prefix);
    if (left !== "") this.replacements.push(inserting(raw.tag.start, left));
    const wanted = this.inRow[this.done]?.column === raw.column ? this.inRow[this.done] : undefined;
    if (wanted) this.done += 1;
    const text = wanted ? this.changed(raw, wanted) : this.unchanged(raw);
    if (text !== undefined) {
      this.replacements.push({ start: raw.tag.start, end: raw.end, text });
    }
    this.leaning.pass(raw, wanted !== undefined && !keepsFormula(wanted));
  }

  rowEnd(raw: RawRow, closeStart: number): void {
    const { tag } = raw;
    const rest = this.cellsBefore(Infinity, tag.prefix);
    const own = this.context.text.slice(tag.start, tag.openEnd);
    const { heights, hidden } = this.context;
    const shown = withHidden(own, hidden.get(raw.row) ?? flag(tag, "hidden"), flag(tag, "hidden"));
    const heightened = withHeight(shown, heights.get(raw.row));
    let open = this.inRow.length > 0 ? withSpans(heightened, this.inRow) : heightened;
    if (tag.isEmptyTag && rest !== "") {
      open = `${unclosed(open)}>${rest}</${prefixed(tag.prefix, tag.local)}>`;
    } else if (rest !== "") this.replacements.push(inserting(closeStart, rest));
    if (open !== own) this.replacements.push({ start: tag.start, end: tag.openEnd, text: open });
    this.inRow = [];
  }

  /** Rows below the last of the file, for the end of the rows' element. */
  rowsAtEnd(prefix: string): string {
    return this.rowsBefore(Infinity, prefix);
  }

  private rowsBefore(limit: number, prefix: string): string {
    const rows: string[] = [];
    for (; (this.rows[this.nextRow] ?? limit) < limit; this.nextRow++) {
      const row = this.rows[this.nextRow] as number;
      this.inRow = this.context.wanted.inRow(row);
      this.done = 0;
      this.rowStyle = 0;
      const cells = this.cellsBefore(Infinity, prefix);
      const name = prefixed(prefix, "row");
      const height = this.context.heights.get(row);
      const tag = withHeight(`<${name} r="${String(row + 1)}">`, height);
      if (cells !== "" || height !== undefined) rows.push(`${tag}${cells}</${name}>`);
    }
    return rows.join("");
  }

  /** Wanted cells of this row that the file does not have, up to a column. */
  private cellsBefore(limit: number, prefix: string): string {
    const cells: string[] = [];
    for (; (this.inRow[this.done]?.column ?? limit) < limit; this.done++) {
      const wanted = this.inRow[this.done] as Wanted;
      this.refuseHalfArray(wanted, undefined);
      if (wanted.plan.kind === "nothing") continue;
      if (wanted.plan.kind === "keep" && Object.keys(wanted.dress).length === 0) continue;
      const base = wanted.base ?? (this.rowStyle || this.context.columnStyle(wanted.column));
      cells.push(newCell(wanted, wanted.plan, this.marks(wanted, base, prefix)));
    }
    return cells.join("");
  }

  private marks(wanted: Wanted, given: number, prefix: string): CellMarks {
    const { context } = this;
    const base = wanted.dress.as ?? given;
    const isPlain = wanted.dress.format === undefined && wanted.isDate === true;
    const needsFormat = isPlain && context.formatOf(base) === "General";
    const dress = needsFormat ? { ...wanted.dress, format: dateFormat } : wanted.dress;
    return { prefix, style: context.dressed(base, dress), dynamicMark: context.dynamicMark };
  }

  private changed(raw: RawCell, wanted: Wanted): string | undefined {
    this.refuseHalfArray(wanted, raw);
    const { plan } = wanted;
    const base = raw.style === 0 ? (wanted.base ?? 0) : raw.style;
    const marks = this.marks(wanted, base, raw.tag.prefix);
    if (plan.kind === "keep") return redressed(this.context.text, raw, marks.style);
    if (plan.kind === "result") {
      return withResult(this.context.text, raw, plan.value as StoredValue, marks);
    }
    const staysPlain = plan.kind === "formula" && plan.array === undefined && !isArrayFormula(raw);
    if (raw.formula && !staysPlain) this.droppedFormulas.push(cellName(raw.row, raw.column));
    return newCell(raw, plan, marks);
  }

  /** A cell nobody asked to change, which leans on one that changes. */
  private unchanged(raw: RawCell): string | undefined {
    const own = this.leaning.ownFormula(raw);
    if (own !== undefined) return withOwnFormula(this.context.text, raw, own, raw.tag.prefix);
    const isVacated = this.leaning.arrays.at(raw)?.about.isReplaced === true;
    if (!isVacated || raw.formula !== undefined || raw.value === undefined) return undefined;
    const marks = { prefix: raw.tag.prefix, style: raw.style, dynamicMark: undefined };
    return newCell(raw, { kind: "nothing" }, marks);
  }

  private refuseHalfArray(wanted: Wanted, raw: RawCell | undefined): void {
    const cell = named(this.context.sheet, wanted.row, wanted.column);
    const array = this.leaning.arrays.at(wanted);
    if (array && !array.about.isReplaced && !keepsFormula(wanted)) {
      refuse({ code: "in-array", cell, area: areaName(array.area) });
    }
    if (wanted.plan.kind === "result" && !array && !raw?.formula) {
      refuse({ code: "no-formula", cell });
    }
    if (wanted.plan.kind !== "spilled" || !raw) return;
    const { from, isEmptied } = wanted.plan;
    const isOwn = array?.area.row === from.row && array.area.column === from.column;
    const isEmpty = raw.formula === undefined && (raw.value ?? raw.inline ?? "") === "";
    if (!isOwn && !isEmpty && !isEmptied) {
      refuse({
        code: "not-empty",
        cell,
        wanted: `the answer of ${cellName(from.row, from.column)}`,
      });
    }
  }
}

/** A row's tag may say between which columns its cells stand; that must stay true. */
function withSpans(tag: string, cells: readonly Wanted[]): string {
  const spans = /\sspans\s*=\s*["'](\d+):(\d+)["']/.exec(tag);
  const filled = cells
    .filter((cell) => cell.plan.kind !== "nothing")
    .map(({ column }) => column + 1);
  if (!spans || filled.length === 0) return tag;
  const first = Math.min(Number(spans[1]), ...filled);
  const last = Math.max(Number(spans[2]), ...filled);
  return withAttribute(tag, "spans", `${String(first)}:${String(last)}`);
}

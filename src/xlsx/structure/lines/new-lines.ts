/**
 * What new lines hold: the look of the line before them, or of the one behind where that before is one of
 * headings; and in a table the formulas of its columns, in the form the file has its calls in.
 */
import { cellName } from "../../../sheet/cell-name";
import { filledDown } from "../../formulas/shared";
import { storedFormula } from "../../formulas/to-file";
import type { Sheet, Table } from "../../model";
import { newCell } from "../../patch/cell-xml";
import { attribute } from "../../xml/scan";
import { prefixed, withAttribute } from "../../xml/tag";
import type { Lines } from "./lines";
import { movedFormula } from "./moved-formula";
import type { Beside, RowsOf } from "./rows-of";

export interface NewIn {
  /** Has the file its calls of ours as arrays? */
  readonly callsAreArrays: () => boolean;
  readonly sheet: Sheet;
  readonly lines: Lines;
  readonly prefix: string;
  readonly dynamicMark: number | undefined;
  /** Lines of headings, besides those of tables. */
  readonly headings: ReadonlySet<number>;
}

const lastOf = ({ area, hasTotals }: Table): number =>
  area.row + area.rows - 1 - (hasTotals ? 1 : 0);
const firstOf = ({ area, hasHeadings }: Table): number => area.row + (hasHeadings ? 1 : 0);

/** Do new rows stand among the rows of a table? */
const isAmong = (table: Table, at: number): boolean =>
  at > table.area.row && at <= lastOf(table) + (table.hasTotals ? 1 : 0);

/** A formula of a column, of the row of its table nearest to the new ones. */
interface Near {
  readonly formula: string;
  /** The row it is of, as it is there now. */
  readonly row: number;
}

/** By column, the formula that a row nearest to the new ones has there, as it is there now. */
function nearest({ sheet, lines }: NewIn, table: Table): Map<number, Near> {
  const distance = (row: number): number =>
    row < lines.at ? lines.at - row : row - lines.at + 1.5;
  const [first, last] = [firstOf(table), lastOf(table)];
  const found = new Map<number, Near>();
  for (const { row, column, formula } of sheet.cells) {
    if (formula === undefined || row < first || row > last) continue;
    const known = found.get(column);
    if (!known || distance(row) < distance(known.row)) found.set(column, { formula, row });
  }
  return new Map(
    [...found].map(([column, { formula, row }]) => {
      const now = movedFormula(formula, sheet.name, lines) ?? formula;
      return [column, { formula: now, row: lines.near(row) }];
    }),
  );
}

/** A formula of new rows: one text for all of them, or that of another row filled down. */
interface Filled {
  readonly table: string;
  readonly shown: (row: number) => string;
}

/** Formulas of columns by their place. */
function formulasIn(within: NewIn): Map<number, Filled> {
  const found = new Map<number, Filled>();
  if (within.lines.axis === "column") return found;
  for (const table of within.sheet.tables.filter((each) => isAmong(each, within.lines.at))) {
    const near = nearest(within, table);
    table.columns.forEach(({ formula }, index) => {
      if (formula === undefined) return;
      const column = table.area.column + index;
      const from = near.get(column);
      const shown = (row: number): string =>
        from ? filledDown(from.formula, row - from.row) : formula;
      found.set(column, { shown, table: table.name });
    });
  }
  return found;
}

const emptyCell = ({ prefix, dynamicMark }: NewIn, row: number, column: number, style: number) =>
  style === 0 ? "" : newCell({ row, column }, { kind: "nothing" }, { prefix, style, dynamicMark });

function formulaCell(
  within: NewIn,
  row: number,
  column: number,
  style: number,
  wanted: Filled,
): string {
  const { prefix, dynamicMark } = within;
  const stored = storedFormula(wanted.shown(row), cellName(row, column), wanted.table);
  const isArray = stored.isArray || (stored.callsUs && within.callsAreArrays());
  const xml = newCell(
    { row, column },
    {
      kind: "formula",
      formula: stored.text,
      meant: stored.meant,
      result: undefined,
      ...(isArray ? { array: { row, column, rows: 1, columns: 1 } } : {}),
    },
    { prefix, style, dynamicMark },
  );
  // without a result it is marked to be worked out at the next occasion
  const name = `<${prefixed(prefix, "f")}`;
  return xml.replace(name, `${name} ca="1"`);
}

/** Which side new lines look like: that before, but for a line of headings. */
function isLikeBefore({ sheet, lines, headings }: NewIn): boolean {
  const before = lines.at - 1;
  if (headings.has(before)) return false;
  if (lines.axis === "column") return true;
  return !sheet.tables.some(({ area, hasHeadings }) => hasHeadings && area.row === before);
}

const copied = ["s", "customFormat", "ht", "customHeight"];

function rowTag(rows: RowsOf, isBefore: boolean, prefix: string, row: number): string {
  const like = isBefore ? rows.tags.before : rows.tags.after;
  let tag = withAttribute(`<${prefixed(prefix, "row")}>`, "r", String(row + 1));
  for (const name of copied) {
    tag = withAttribute(tag, name, like && attribute(like.tag, name));
  }
  const levels = [rows.tags.before, rows.tags.after].map(
    (each) => each && attribute(each.tag, "outlineLevel"),
  );
  return levels[0] === levels[1] ? withAttribute(tag, "outlineLevel", levels[0]) : tag;
}

const stylesOf = (beside: readonly Beside[]): Map<number, number> =>
  new Map(beside.map(({ line, style }) => [line, style]));

/** The new rows; "" where they would hold nothing and look like nothing. */
export function newRows(within: NewIn, rows: RowsOf): string {
  const { lines, prefix } = within;
  const isBefore = isLikeBefore(within);
  const styles = stylesOf(isBefore ? rows.cells.before : rows.cells.after);
  const formulas = formulasIn(within);
  const columns = new Set([...styles.keys(), ...formulas.keys()]);
  const rising = [...columns].sort((a, b) => a - b);
  let xml = "";
  for (let row = lines.at; row < lines.at + lines.count; row++) {
    const cells = rising.map((column) => {
      const [style, wanted] = [styles.get(column) ?? 0, formulas.get(column)];
      return wanted
        ? formulaCell(within, row, column, style, wanted)
        : emptyCell(within, row, column, style);
    });
    const tag = rowTag(rows, isBefore, prefix, row);
    xml += `${tag}${cells.join("")}</${prefixed(prefix, "row")}>`;
  }
  return xml.replaceAll(/<[^<>]*row r="\d+"><\/[^<>]*row>/g, "");
}

/** New cells of new columns, by row. */
export function newCells(within: NewIn, rows: RowsOf): Map<number, string> {
  const { lines } = within;
  const beside = isLikeBefore(within) ? rows.cells.before : rows.cells.after;
  const made = new Map<number, string>();
  for (const { line: row, style } of beside) {
    const cells = Array.from({ length: lines.count }, (_, index) =>
      emptyCell(within, row, lines.at + index, style),
    );
    if (style !== 0) made.set(row, cells.join(""));
  }
  return made;
}

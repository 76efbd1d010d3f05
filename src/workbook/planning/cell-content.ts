/**
 * What one cell of the record's row gets, in a table that is there. What was typed wins; a calculated
 * column keeps its formula or gets it; a cell of another's column is left alone.
 */
import type { Content } from "../../sheet/port";
import type { BookValue } from "../../sheet/book";
import type { Column, TableShape } from "../tables/column";
import { otherColumnFormula, ourColumnFormula } from "./logbook/column-formula";
import { remarkWords } from "./remark-wording";
import { isSameFormula } from "../../sheet/formula/same-formula";
import { isEmpty, type Logbook, type ReadCell, readCell } from "./snapshot";
import type { TargetRow } from "./record/target-row";

/** A cell of the row, and all that decides what it gets. */
export interface RowCell {
  readonly logbook: Logbook;
  /** Of the table, as we make it. */
  readonly shape: TableShape;
  readonly target: TargetRow;
  /** Counted from the table's first column. */
  readonly column: number;
  /** As the table writes it. */
  readonly heading: string;
  readonly now: ReadCell;
  /** The column of ours with that heading. */
  readonly ours: Column | undefined;
  /** What the record has for it. */
  readonly value: BookValue | undefined;
}

export interface Decision {
  readonly content: Content;
  readonly remark?: { readonly sentence: string };
}

const keep: Content = { kind: "keep" };

const isGiven = (format: string): boolean => format !== "General" && format !== "@";

/** How a figure is shown: as in the row itself, as in the row above, or as in our own table. */
function formatFor({ logbook, target, column, now, ours }: RowCell): string {
  if (isGiven(now.format)) return now.format;
  const above = target.row > 1 ? readCell(logbook, target.row - 1, column).format : "General";
  return isGiven(above) ? above : (ours?.format ?? "General");
}

function typed(at: RowCell, value: BookValue, ours: Column): Decision {
  const content: Content =
    typeof value === "number"
      ? { kind: "value", value, format: formatFor(at) }
      : { kind: "value", value };
  const hasFormula =
    ourColumnFormula(at.logbook, at.target.row, at.column, ours, at.shape).kind !== "none";
  if (!hasFormula) return { content };
  return {
    content,
    remark: { sentence: remarkWords.figureForFormula(at.heading) },
  };
}

/** A formula that waits in an empty row of the table. */
function waiting({ now, ours, heading, logbook }: RowCell): Decision {
  const isOther =
    ours?.formula !== undefined && !isSameFormula(now.formula, ours.formula, logbook.table.name);
  if (!isOther) return { content: keep };
  return {
    content: keep,
    remark: { sentence: remarkWords.ownFormula(heading) },
  };
}

/**
 * A column that is typed into goes on with a formula only where two rows or more all have it. One that
 * stands alone (=2.4+0.05) is that row's reading, and would be counted again in this one.
 */
function forTyping(at: RowCell): Decision {
  const { heading, logbook, target, column, now } = at;
  if (!isEmpty(now)) {
    return {
      content: keep,
      remark: { sentence: remarkWords.ownFormula(heading) },
    };
  }
  const formula = target.row > 2 ? otherColumnFormula(logbook, target.row, column) : undefined;
  if (formula === undefined) return { content: keep };
  return {
    content: { kind: "formula", formula, format: formatFor(at) },
    remark: { sentence: remarkWords.ownFormula(heading) },
  };
}

/** The row above holds a figure that somebody typed there. */
function hasTypedAbove({ logbook, target, column }: RowCell): boolean {
  if (target.row < 2) return false;
  const above = readCell(logbook, target.row - 1, column);
  return above.formula === "" && !isEmpty(above) && typeof above.value !== "object";
}

function calculated(at: RowCell, ours: Column): Decision {
  const { heading, logbook, target, column } = at;
  const found = ourColumnFormula(logbook, target.row, column, ours, at.shape);
  if (found.kind === "formula") {
    const { formula, isOurs } = found;
    const content: Content = { kind: "formula", formula, format: formatFor(at) };
    if (isOurs && !hasTypedAbove(at)) return { content };
    if (isOurs) {
      return {
        content,
        remark: { sentence: remarkWords.formulaAmongFigures(heading) },
      };
    }
    return {
      content,
      remark: { sentence: remarkWords.ownFormula(heading) },
    };
  }
  return {
    content: keep,
    remark: { sentence: remarkWords.otherOrder(heading) },
  };
}

function notOurs(at: RowCell): Decision {
  if (!isEmpty(at.now)) return { content: keep };
  const formula = otherColumnFormula(at.logbook, at.target.row, at.column);
  if (formula === undefined) return { content: keep };
  return { content: { kind: "formula", formula, format: formatFor(at) } };
}

export function decided(at: RowCell): Decision {
  const { value, ours, now, target } = at;
  if (ours && value !== undefined) return typed(at, value, ours);
  if (ours && ours.formula === undefined) return forTyping(at);
  if (now.formula !== "" && !target.isNew) return waiting(at);
  return ours ? calculated(at, ours) : notOurs(at);
}

/**
 * A formula rewritten for lines that were put in or taken out: each of its references to the sheet says
 * where its cells are now. A reference whose cells are all gone becomes #REF!, as the spreadsheet
 * programs have it. Names, parts of tables, texts, other workbooks and sheets stay. So does a reference
 * to several sheets: on one of them only did rows move, and those programs leave it too.
 */
import { isProblem } from "../../../core/problem/problem";
import { columnLetters, columnNumber } from "../../../sheet/cell-name";
import { readFormula } from "../../../sheet/formula/read";
import { sheetOf } from "../../../sheet/formula/reference";
import { type Replacement, splice } from "../../../sheet/formula/splice";
import type { Expression, Reference } from "../../../sheet/formula/tree";
import { nodesOf } from "../../../sheet/formula/walk";
import type { Lines } from "./lines";

const folded = (name: string): string => name.toLowerCase();

/** A corner as it is written: a cell, or a row or a column alone. */
const corner = /^(\$?)([A-Za-z]{1,3})?(?:(\$?)(\d{1,7}))?$/;

/** What stands at one end of a reference, on the axis that moves, and around it. */
interface Corner {
  readonly before: string;
  readonly mark: string;
  /** Undefined where the other axis stands alone: A:A for rows. */
  readonly line: number | undefined;
  readonly after: string;
}

/** @example cornerOf("$B2", "row") // { before: "$B", mark: "", line: 1, after: "" } */
function cornerOf(text: string, axis: Lines["axis"]): Corner | undefined {
  const [whole, mark = "", letters, rowMark = "", digits] = corner.exec(text) ?? [];
  if (whole === undefined) return undefined;
  if (letters === undefined) {
    // a row alone has its mark where a column's would be
    const line = axis === "row" && digits !== undefined ? Number(digits) - 1 : undefined;
    return line === undefined
      ? { before: text, mark: "", line, after: "" }
      : { before: "", mark: mark || rowMark, line, after: "" };
  }
  if (axis === "column") {
    return { before: "", mark, line: columnNumber(letters), after: rowMark + (digits ?? "") };
  }
  const line = digits === undefined ? undefined : Number(digits) - 1;
  return { before: mark + letters, mark: rowMark, line, after: "" };
}

const written = ({ before, mark, after }: Corner, line: number, axis: Lines["axis"]): string =>
  before + mark + (axis === "row" ? String(line + 1) : columnLetters(line)) + after;

/** Where the lines from one to another are now; undefined when none of them is left. */
export type Moving = (
  first: Corner & Known,
  last: Corner & Known,
) => readonly [number, number] | undefined;
interface Known {
  readonly line: number;
}

const isKnown = (found: Corner): found is Corner & Known => found.line !== undefined;

/** A1, $A$1:B2, 3:4 on the sheet; undefined when nothing of it is left. */
function movedBody(body: string, axis: Lines["axis"], moving: Moving): string | undefined {
  const [from = "", to] = body.split(":");
  const first = cornerOf(from, axis);
  const last = to === undefined ? first : cornerOf(to, axis);
  if (!first || !last || !isKnown(first) || !isKnown(last)) return body;
  const isTurned = last.line < first.line;
  const span = isTurned ? moving(last, first) : moving(first, last);
  if (!span) return undefined;
  const [start, end] = isTurned ? [span[1], span[0]] : span;
  const one = written(first, start, axis);
  return to === undefined ? one : `${one}:${written(last, end, axis)}`;
}

/** Does a reference mean cells of the sheet alone? */
function isOn(reference: Reference, home: string | undefined, sheet: string): boolean {
  if (!/^(?:cell|block|lines)$/.test(reference.shape)) return false;
  const named = sheetOf(reference);
  if (!named) return home !== undefined && folded(home) === folded(sheet);
  if (named.workbook !== undefined || folded(named.first) !== folded(sheet)) return false;
  return named.last === undefined || folded(named.last) === folded(sheet);
}

/** With its sheet before it, as some write it, it is one that not every program reads. */
const lost = "#REF!";

/** The references of a formula to the sheet, each with its text as it is now to be. */
function movedReferences(
  tree: Expression,
  home: string | undefined,
  { sheet, axis }: Pick<Lines, "sheet" | "axis">,
  moving: Moving,
): Replacement[] {
  return [...nodesOf(tree)].flatMap((node): Replacement[] => {
    if (node.kind !== "reference" || !isOn(node, home, sheet)) return [];
    const at = node.text.lastIndexOf("!") + 1;
    const body = node.text.slice(at);
    const now = movedBody(body, axis, moving);
    if (now === body) return [];
    return [
      {
        start: node.start,
        end: node.end,
        text: now === undefined ? lost : node.text.slice(0, at) + now,
      },
    ];
  });
}

interface Found {
  readonly line: number;
  readonly isMarked: boolean;
  readonly isBlock: boolean;
  /** It is one of the sheet that moves. */
  readonly isMoving: boolean;
}

/** Every corner of a formula's references that has a line on the axis. */
export function cornersOf(
  tree: Expression,
  home: string,
  { sheet, axis }: Pick<Lines, "sheet" | "axis">,
): Found[] {
  return [...nodesOf(tree)].flatMap((node) => {
    if (node.kind !== "reference" || !/^(?:cell|block|lines)$/.test(node.shape)) return [];
    const corners = node.text.slice(node.text.lastIndexOf("!") + 1).split(":");
    return corners.flatMap((written) => {
      const found = cornerOf(written, axis);
      if (found?.line === undefined) return [];
      return [
        {
          line: found.line,
          isMarked: found.mark !== "",
          isBlock: corners.length > 1,
          isMoving: isOn(node, home, sheet),
        },
      ];
    });
  });
}

/** Every mark of a cell is as good as another: where the cell is now, the reference says. */
export const byLines =
  (lines: Lines): Moving =>
  (first, last) =>
    lines.span(first.line, last.line);

/**
 * In a name a line without a dollar sign is not one of the sheet: it is counted from the cell that uses
 * the name, and moves with that.
 */
export const byFixedLines =
  (lines: Lines): Moving =>
  (first, last) => {
    if (first.mark && last.mark) return lines.span(first.line, last.line);
    const one = first.mark ? lines.near(first.line) : first.line;
    return [one, last.mark ? lines.near(last.line) : last.line];
  };

/** Several areas, as a name or a chart may stand for them, are read in brackets too. */
const forms = (formula: string): readonly string[] => [formula, `(${formula})`];

/**
 * A formula moved; undefined when it cannot be read.
 * @param formula with or without its equals sign
 * @param home the sheet of its cell; undefined where it has none, as in a name of the workbook
 * @example movedFormula("SUM(A1:A9)", "Log", lines) // "SUM(A1:A10)"
 */
export function movedFormula(
  formula: string,
  home: string | undefined,
  lines: Lines,
  moving: Moving = byLines(lines),
): string | undefined {
  for (const form of forms(formula)) {
    const read = readFormula(form);
    if (isProblem(read)) continue;
    const changes = movedReferences(read.tree, home, lines, moving);
    if (changes.length === 0) return formula;
    const offset = form.length === formula.length ? 0 : 1;
    const moved = splice(form, changes);
    return offset === 0 ? moved : moved.slice(1, -1);
  }
  return undefined;
}

/** A formula as it comes out in plain functions, for every cell of its form. */
import type { Mode, Operand, Standing } from "./standing";
import type { OwnRowCell } from "./located";
import { pieceIndex, standInPattern } from "../pieces";

/** A text with gaps, each filled as its cell asks. */
export type Parts = readonly (string | Operand)[];

export interface HelperCell {
  readonly label: string;
  readonly parts: Parts;
  /** It works on many cells at once. */
  readonly isArray: boolean;
}

/** A table of helper cells. */
export interface HelperBlock {
  readonly label: string;
  readonly rows: readonly (readonly Parts[])[];
}

interface Common {
  /** The functions of ours that it calls. */
  readonly ids: readonly string[];
}

export type Template = Common &
  (
    | {
        readonly kind: "formulas";
        /** One formula, or one for each cell of a table that spilled; undefined keeps its value. */
        readonly rows: readonly (readonly (Parts | undefined)[])[];
        readonly isTable: boolean;
        readonly isArray: boolean;
        readonly helpers: readonly HelperCell[];
        readonly blocks: readonly HelperBlock[];
        /** A cell of the formula's own row. */
        readonly ownRow: OwnRowCell | undefined;
      }
    /** A sentence: the copy keeps its value. */
    | { readonly kind: "value" }
    | {
        readonly kind: "left";
        /** Completes "Left as it is: ...". */
        readonly reason: string;
        /** Where the cell holds a text, it is a sentence with something around it. */
        readonly isSentence: boolean;
      }
    /** No call of ours is in it. */
    | { readonly kind: "untouched" }
  );

export type FormulaTemplate = Extract<Template, { kind: "formulas" }>;

const opening = "\uE000";
const closing = "\uE001";
const gap = new RegExp(`${opening}(\\d+)${closing}|${standInPattern}`, "g");

/** Text that stands for an operand until the formula is written out. */
export const markOf = (index: number): string => `${opening}${String(index)}${closing}`;

const marks = new RegExp(`${opening}(\\d+)${closing}`, "g");

/** The marks in a text, by their figures. */
export const marksIn = (marked: string): number[] =>
  [...marked.matchAll(marks)].map(([, index]) => Number(index));

/** Is the text one cell of ours and nothing else? */
export const isMark = (marked: string): boolean =>
  marked.startsWith(opening) && marked.indexOf(closing) === marked.length - 1;

/** A text with marks taken apart. Cells that nothing was put in place of come out as they were. */
export function partsOf(marked: string, operands: readonly Operand[]): Parts {
  const parts: (string | Operand)[] = [];
  let done = 0;
  for (const match of marked.matchAll(gap)) {
    const [whole, mark, piece] = match;
    if (match.index > done) parts.push(marked.slice(done, match.index));
    const operand: Operand | undefined =
      mark === undefined
        ? ({ pieces }) => pieces[pieceIndex(piece ?? "")] ?? ""
        : operands[Number(mark)];
    parts.push(operand ?? whole);
    done = match.index + whole.length;
  }
  if (done < marked.length) parts.push(marked.slice(done));
  return parts;
}

export function written(parts: Parts, standing: Standing, mode: Mode): string {
  let text = "";
  for (const part of parts) text += typeof part === "string" ? part : part(standing, mode);
  return text;
}

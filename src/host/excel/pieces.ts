/**
 * Questions in pieces that the program answers: on the web no answer may be larger than 5 MB, and a
 * block of cells is as large as somebody's logbook.
 */
import type { Block, Found, Question } from "../../sheet/port";

/** Cells in one answer: forty of ours take about 4.9 kB with their formulas and formats. */
const mostCells = { cells: 20_000, values: 150_000 };

type OfCells = Extract<Question, { ask: "cells" | "values" }>;
type FoundCells = Extract<Found, { kind: "cells" | "values" }>;

export interface Piece {
  readonly question: Question;
  /** Which of the questions it is a piece of. */
  readonly of: number;
}

const isOfCells = (question: Question): question is OfCells =>
  question.ask === "cells" || question.ask === "values";

/** The part of an answer that a question takes, 1 being all of it. */
const shareOf = (question: Question): number =>
  isOfCells(question)
    ? (question.block.rows * question.block.columns) / mostCells[question.ask]
    : 0.01;

const rowsOf = (block: Block, from: number, rows: number): Block => ({
  ...block,
  row: block.row + from,
  rows: Math.min(rows, block.rows - from),
});

/** Rows outside. */
function inRows(question: OfCells, of: number, rows: number): Piece[] {
  const { block } = question;
  return Array.from({ length: Math.ceil(block.rows / rows) }, (_, index) => ({
    question: { ...question, block: rowsOf(block, index * rows, rows) },
    of,
  }));
}

const piecesOf = (question: Question, of: number): Piece[] => {
  if (!isOfCells(question) || shareOf(question) <= 1) return [{ question, of }];
  const rows = Math.floor(mostCells[question.ask] / question.block.columns);
  return inRows(question, of, Math.max(1, rows));
};

/** The questions in pieces, as many together as fit one answer. */
export function inPieces(questions: readonly Question[]): Piece[][] {
  const groups: Piece[][] = [];
  let full = Infinity;
  for (const piece of questions.flatMap(piecesOf)) {
    const share = shareOf(piece.question);
    if (full + share > 1) {
      groups.push([]);
      full = 0;
    }
    groups.at(-1)?.push(piece);
    full += share;
  }
  return groups;
}

/** Two groups that come to the same, each about half as large; undefined where it cannot be less. */
export function halves(group: readonly Piece[]): Piece[][] | undefined {
  const [first] = group;
  if (!first) return undefined;
  if (group.length > 1) {
    const middle = Math.ceil(group.length / 2);
    return [group.slice(0, middle), group.slice(middle)];
  }
  const { question, of } = first;
  if (!isOfCells(question) || question.block.rows < 2) return undefined;
  return inRows(question, of, Math.ceil(question.block.rows / 2)).map((piece) => [piece]);
}

/** @param block as it was asked for: the answers of its pieces are those of its rows */
function joined(found: readonly Found[], block: Block): Found {
  const [first] = found;
  if (found.length < 2 || !first || !("block" in first) || first.kind === "table") {
    return first ?? { kind: "nothing" };
  }
  const pieces = found.filter((each): each is FoundCells => each.kind === first.kind);
  const whole = { ...first, block: { ...first.block, rows: block.rows } };
  const values = pieces.flatMap((each) => each.values);
  if (whole.kind === "values") return { ...whole, values };
  const cells = pieces.filter((each) => each.kind === "cells");
  return {
    ...whole,
    values,
    formulas: cells.flatMap(({ formulas }) => formulas),
    formats: cells.flatMap(({ formats }) => formats),
  };
}

/** The answers in the order asked. */
export function putTogether(
  questions: readonly Question[],
  answered: readonly { readonly of: number; readonly found: Found }[],
): Found[] {
  const byQuestion: Found[][] = questions.map(() => []);
  for (const { of, found } of answered) byQuestion[of]?.push(found);
  return questions.map((question, at) => {
    const found = byQuestion[at] ?? [];
    return isOfCells(question) ? joined(found, question.block) : (found[0] ?? { kind: "nothing" });
  });
}

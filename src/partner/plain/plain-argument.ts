/** One argument of a call, as a twin reads it. */
import { columnLetters } from "../../sheet/cell-name";
import type { TwinArgument } from "../../functions/twin";
import { print } from "../../sheet/formula/print";
import { targetOf } from "../../sheet/formula/reference";
import type { ArrayConstant, Constant, Expression, Reference } from "../../sheet/formula/tree";

/** Why a call cannot be written out on an empty sheet; travels as an exception inside this folder. */
export class NotHere extends Error {}

const constantText = (constant: Constant): string => {
  const text = print(constant);
  return text.startsWith("-") ? `(${text})` : text;
};

export const single = (text: string): TwinArgument => ({
  text,
  rows: 1,
  columns: 1,
  cell: () => text,
});

const arrayArgument = (array: ArrayConstant): TwinArgument => ({
  text: print(array),
  rows: array.rows.length,
  columns: array.rows[0]?.length ?? 0,
  cell: (row, column) => {
    const constant = array.rows[row]?.[column];
    return constant ? constantText(constant) : '""';
  },
});

function cellsArgument(part: Reference): TwinArgument {
  const target = targetOf(part);
  if (target.kind !== "cells") return single(part.text);
  const { top, left, bottom, right } = target.edges;
  if (top === undefined || left === undefined || bottom === undefined || right === undefined) {
    throw new NotHere(`${part.text} has no end`);
  }
  const sheet = part.text.slice(0, part.text.lastIndexOf("!") + 1);
  return {
    text: part.text,
    rows: bottom - top + 1,
    columns: right - left + 1,
    cell: (row, column) => `${sheet}${columnLetters(left + column)}${top + row + 1}`,
  };
}

const isFigureWithSign = (part: Expression): boolean =>
  (part.kind === "prefix" || part.kind === "postfix") && part.operand.kind === "number";

/** @returns undefined for what has to be worked out first */
export function plainArgument(part: Expression): TwinArgument | undefined {
  switch (part.kind) {
    case "number":
    case "text":
    case "boolean":
    case "error":
      return single(constantText(part));
    case "array":
      return arrayArgument(part);
    case "reference":
      return cellsArgument(part);
    default:
      return isFigureWithSign(part) ? single(`(${print(part)})`) : undefined;
  }
}

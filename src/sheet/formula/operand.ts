/** What an operator stands beside: a constant, a reference, a call, a bracketed expression. */
import { type Outcome, isProblem } from "../../core/problem/problem";
import { readArray } from "./array-constant";
import { readCall } from "./call";
import { constantOf } from "./constant";
import { titreIdOf } from "./names";
import { strength } from "./operators";
import { inside, type Reading } from "./reading";
import type { Token } from "./token";
import type { Expression, Prefix, Reference, ReferenceShape } from "./tree";

const shapes: Partial<Record<Token["kind"], ReferenceShape>> = {
  cells: "cell",
  lines: "lines",
  name: "name",
  structured: "structured",
};

/** The colon of a block stands after the cell it begins with, not inside a sheet's name. */
const isBlock = (text: string): boolean => /:[^!']*$/.test(text);

function reference({ cursor }: Reading, token: Token, shape: ReferenceShape): Reference {
  cursor.advance();
  const isCells = shape === "cell" && isBlock(token.text);
  const { text, start, end } = token;
  return { kind: "reference", shape: isCells ? "block" : shape, text, start, end };
}

/** After a sheet's name: a function of another workbook, or a reference that was lost. */
function onSheet(reading: Reading, sheet: Token): Outcome<Expression> {
  const { cursor } = reading;
  cursor.advance();
  if (!cursor.take("!")) return cursor.broken("value-missing");
  const token = cursor.here;
  if (token?.kind === "function") return readCall(reading, sheet);
  if (token?.kind !== "error") return cursor.broken("value-missing");
  cursor.advance();
  const text = `${sheet.text}!${token.text}`;
  return { kind: "reference", shape: "lost", text, start: sheet.start, end: token.end };
}

function bracketed(reading: Reading, opening: Token): Outcome<Expression> {
  const { cursor } = reading;
  const within = inside(reading, true);
  cursor.advance();
  const inner = within.expression(within, 0);
  if (isProblem(inner)) return inner;
  if (!cursor.here) return cursor.broken("bracket-not-closed", opening);
  if (!cursor.take(")")) return cursor.broken("operator-missing");
  return { ...inner, brackets: { start: opening.start, end: cursor.end } };
}

function prefixed(reading: Reading, sign: Token): Outcome<Prefix> {
  reading.cursor.advance();
  const within = inside(reading, reading.commaJoins);
  const operand = within.expression(within, strength.prefix);
  if (isProblem(operand)) return operand;
  const operator = sign.text as Prefix["operator"];
  return { kind: "prefix", operator, operand, start: sign.start, end: reading.cursor.end };
}

function afterSign(reading: Reading, token: Token): Outcome<Expression> {
  switch (token.text) {
    case "(":
      return bracketed(reading, token);
    case "{":
      return readArray(reading.cursor);
    case "-":
    case "+":
    case "@":
      return prefixed(reading, token);
    default:
      return reading.cursor.broken("value-missing");
  }
}

/** A function of ours with a space before its bracket is still a call: people type it so. */
const isSpacedCall = (token: Token, after: boolean): boolean =>
  token.kind === "name" && after && titreIdOf(token.text) !== undefined;

export function readOperand(reading: Reading): Outcome<Expression> {
  const { cursor } = reading;
  const token = cursor.here;
  if (!token) return cursor.broken("value-missing");
  const constant = constantOf(token, cursor);
  if (constant) {
    cursor.advance();
    return constant;
  }
  const shape = shapes[token.kind];
  if (token.kind === "function" || isSpacedCall(token, cursor.isFollowedBy("("))) {
    return readCall(reading);
  }
  if (shape) return reference(reading, token, shape);
  if (token.kind === "sheet") return onSheet(reading, token);
  if (token.kind === "operator") return afterSign(reading, token);
  return cursor.broken(token.kind === "open-text" ? "text-not-closed" : "unreadable");
}

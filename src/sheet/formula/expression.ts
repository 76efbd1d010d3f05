/** Operators and what they join, strongest first; those of one strength pair from the left. */
import { type Outcome, isProblem } from "../../core/problem/problem";
import { readArguments } from "./call";
import { readOperand } from "./operand";
import { binaryStrength, joinsReferences, strength } from "./operators";
import type { Reading } from "./reading";
import { isReferring, joined } from "./referring";
import { withBrackets } from "./span";
import type { Expression } from "./tree";

/** Far beyond what a spreadsheet takes (64 levels), far below what would exhaust the stack. */
const deepest = 128;

/** What may begin the second of two references with a space between them. */
const beginsReference = ({ cursor }: Reading): boolean =>
  cursor.isAt("(") ||
  /^(cells|lines|name|structured|function|sheet)$/.test(cursor.here?.kind ?? "") ||
  cursor.here?.text.toUpperCase() === "#REF!";

/** The sign between what was read and what follows; a space between two references is one. */
function signHere(reading: Reading, left: Expression): string | undefined {
  const { cursor } = reading;
  if (cursor.isSpaced && isReferring(left) && beginsReference(reading)) return " ";
  if (cursor.here?.kind !== "operator") return undefined;
  return cursor.isAt(",") && !reading.commaJoins ? undefined : cursor.here.text;
}

function binary(reading: Reading, left: Expression, sign: string): Outcome<Expression> {
  const { cursor } = reading;
  if (joinsReferences(sign) && !isReferring(left)) return cursor.broken("not-a-reference");
  if (sign !== " ") cursor.advance();
  const second = cursor.here;
  const right = reading.expression(reading, (binaryStrength(sign) ?? 0) + 1);
  if (isProblem(right)) return right;
  if (joinsReferences(sign) && !isReferring(right)) return cursor.broken("not-a-reference", second);
  return joined(sign, left, right);
}

/** One step: what was read, with the next operator and its other side; undefined when none follows. */
function extended(
  reading: Reading,
  left: Expression,
  weakest: number,
): Outcome<Expression> | undefined {
  const { cursor } = reading;
  const isCallable = left.kind === "call" || left.kind === "applied";
  if (cursor.isAt("(") && !cursor.isSpaced && isCallable) {
    const given = readArguments(reading);
    if (isProblem(given)) return given;
    return {
      kind: "applied",
      applies: left,
      arguments: given,
      start: withBrackets(left).start,
      end: cursor.end,
    };
  }
  const sign = signHere(reading, left);
  if (sign === "%" || sign === "#") {
    if (weakest > (sign === "%" ? strength.percent : strength.spill)) return undefined;
    if (sign === "#" && !isReferring(left)) return cursor.broken("not-a-reference");
    cursor.advance();
    return {
      kind: "postfix",
      operator: sign,
      operand: left,
      start: withBrackets(left).start,
      end: cursor.end,
    };
  }
  const binds = sign === undefined ? undefined : binaryStrength(sign);
  if (sign === undefined || binds === undefined || binds < weakest) return undefined;
  return binary(reading, left, sign);
}

export function readExpression(reading: Reading, weakest: number): Outcome<Expression> {
  if (reading.depth > deepest) return reading.cursor.broken("too-deep");
  let found = readOperand(reading);
  while (!isProblem(found)) {
    const more = extended(reading, found, weakest);
    if (more === undefined) return found;
    found = more;
  }
  return found;
}

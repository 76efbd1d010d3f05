/** {1,-2;"a",#N/A}: figures with their sign, texts, TRUE, FALSE and errors, in rows of one length. */
import { type Outcome, isProblem } from "../../core/problem/problem";
import { constantOf } from "./constant";
import type { Cursor } from "./cursor";
import type { Token } from "./token";
import type { ArrayConstant, Constant } from "./tree";

/** A figure with a sign before it is one constant here, since braces hold no operators. */
function element(cursor: Cursor): Outcome<Constant> {
  const first = cursor.here;
  const isSigned = first?.kind === "operator" && (first.text === "-" || first.text === "+");
  if (isSigned) cursor.advance();
  const token = cursor.here;
  const constant = token && constantOf(token, cursor);
  if (isProblem(constant)) return constant;
  if (!constant || (isSigned && constant.kind !== "number")) return cursor.broken("not-a-constant");
  cursor.advance();
  if (!isSigned || constant.kind !== "number") return constant;
  const isMinus = first.text === "-";
  return {
    ...constant,
    start: first.start,
    text: isMinus ? `-${constant.text}` : constant.text,
    value: isMinus ? -constant.value : constant.value,
  };
}

/** The opening brace is the next token. */
export function readArray(cursor: Cursor): Outcome<ArrayConstant> {
  const opening = cursor.here as Token;
  const rows: Constant[][] = [[]];
  do {
    cursor.advance();
    const constant = element(cursor);
    if (isProblem(constant))
      return cursor.here ? constant : cursor.broken("bracket-not-closed", opening);
    rows.at(-1)?.push(constant);
    if (cursor.isAt(";")) rows.push([]);
  } while (cursor.isAt(",") || cursor.isAt(";"));
  if (!cursor.here) return cursor.broken("bracket-not-closed", opening);
  if (!cursor.take("}")) return cursor.broken("not-a-constant");
  const width = rows[0]?.length;
  if (rows.some((row) => row.length !== width)) return cursor.broken("uneven-rows", opening);
  return { kind: "array", rows, start: opening.start, end: cursor.end };
}

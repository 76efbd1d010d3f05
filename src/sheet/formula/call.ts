/** Function calls: a name, and arguments of which any may be left out. */
import { type Outcome, isProblem } from "../../core/problem/problem";
import { inside, type Reading } from "./reading";
import type { Token } from "./token";
import type { Call, Expression, Omitted } from "./tree";

type Arguments = (Expression | Omitted)[];

/** From the opening bracket, which is the next token, to the closing one. F() has no argument. */
export function readArguments(reading: Reading): Outcome<Arguments> {
  const { cursor } = reading;
  const opening = cursor.here;
  const within = inside(reading, false);
  const found: Arguments = [];
  cursor.advance();
  if (cursor.take(")")) return found;
  for (;;) {
    if (cursor.isAt(",") || cursor.isAt(")")) {
      found.push({ kind: "omitted", start: cursor.end, end: cursor.end });
    } else if (cursor.here) {
      const argument = within.expression(within, 0);
      if (isProblem(argument)) return argument;
      found.push(argument);
    }
    if (cursor.take(")")) return found;
    if (!cursor.here) return cursor.broken("bracket-not-closed", opening);
    if (!cursor.take(",")) return cursor.broken("operator-missing");
  }
}

/** A call whose name is the next token. `sheet` is what stood before its exclamation mark. */
export function readCall(reading: Reading, sheet?: Token): Outcome<Call> {
  const { cursor } = reading;
  const { text: name, start: nameStart, end: nameEnd } = cursor.here as Token;
  const start = sheet?.start ?? nameStart;
  cursor.advance();
  const found = readArguments(reading);
  if (isProblem(found)) return found;
  return {
    kind: "call",
    link: sheet ? `${sheet.text}!` : "",
    name,
    nameAt: { start, end: nameEnd },
    arguments: found,
    start,
    end: cursor.end,
  };
}

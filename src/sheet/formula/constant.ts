/** A token that is a value by itself. */
import type { Outcome } from "../../core/problem/problem";
import type { Cursor } from "./cursor";
import type { Token } from "./token";
import type { Constant } from "./tree";

/** The constant a token writes; undefined when it writes none. The cursor stays where it is. */
export function constantOf(token: Token, cursor: Cursor): Outcome<Constant> | undefined {
  const { kind, text, start, end } = token;
  switch (kind) {
    case "number": {
      const value = Number(text);
      if (!Number.isFinite(value)) return cursor.broken("number-too-large", token);
      return { kind, text, value, start, end };
    }
    case "text":
      return { kind, value: text.slice(1, -1).replace(/""/g, '"'), start, end };
    case "boolean":
      return { kind, value: text.toUpperCase() === "TRUE", start, end };
    case "error":
      return { kind, value: text.toUpperCase(), start, end };
    default:
      return undefined;
  }
}

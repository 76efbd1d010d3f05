/**
 * One cell, however the host hands it over. Every argument of every function is declared `any` and
 * comes through here, so that a cell means the same in every program.
 *
 * Not filled in arrives as null, undefined, "" or white space, and on some desktops as 0: so 0 never
 * carries a meaning of its own. `left-out` is told apart because an argument that is not there at all
 * can mean something else than a cell that is there and empty (see blanks).
 */
export type Cell =
  | { kind: "left-out" }
  | { kind: "empty" }
  | { kind: "number"; value: number }
  | { kind: "text"; text: string }
  | { kind: "boolean"; value: boolean }
  | { kind: "error"; error: string }
  | { kind: "unreadable" };

const leftOut: Cell = { kind: "left-out" };
const empty: Cell = { kind: "empty" };
const unreadable: Cell = { kind: "unreadable" };

const isObject = (raw: unknown): raw is Record<string, unknown> =>
  typeof raw === "object" && raw !== null;

/**
 * The call's own Invocation object lands in a trailing optional place when the program still holds an
 * older list of our functions: it means "left out".
 */
const isInvocation = (raw: Record<string, unknown>): boolean =>
  "functionName" in raw || "setResult" in raw;

const fromNumber = (value: number): Cell => {
  if (!Number.isFinite(value)) return unreadable;
  return value === 0 ? empty : { kind: "number", value };
};

const fromText = (text: string): Cell => (text.trim() === "" ? empty : { kind: "text", text });

const errorCode = (code: unknown): Cell => ({
  kind: "error",
  error: typeof code === "string" && code.startsWith("#") ? code : "#VALUE!",
});

function fromObject(raw: Record<string, unknown>): Cell {
  if (isInvocation(raw)) return leftOut;
  if (raw.type === "Error" || raw.basicType === "Error") return errorCode(raw.basicValue);
  if (typeof raw.code === "string" && raw.code.startsWith("#")) return errorCode(raw.code);
  if (raw.type === "Empty") return empty;
  if ("basicValue" in raw && !isObject(raw.basicValue)) return readCell(raw.basicValue);
  return unreadable;
}

/** What one cell holds. An array is no cell (see grid.ts): like any object that says nothing, it is unreadable. */
export function readCell(raw: unknown): Cell {
  if (raw === null || raw === undefined) return leftOut;
  switch (typeof raw) {
    case "number":
      return fromNumber(raw);
    case "string":
      return fromText(raw);
    case "boolean":
      return { kind: "boolean", value: raw };
    case "object":
      return fromObject(raw as Record<string, unknown>);
    default:
      return unreadable;
  }
}

/** Nothing has been typed there. */
export const isNotFilledIn = (cell: Cell): boolean =>
  cell.kind === "empty" || cell.kind === "left-out";

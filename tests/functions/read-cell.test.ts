/** Every form in which a host hands over a cell, by its published interface, and what it means. */
import { describe, expect, it } from "vitest";
import { readCell } from "../../src/functions/cells/cell";
import { readGrid } from "../../src/functions/cells/grid";

const nothing = { kind: "left-out" };
const empty = { kind: "empty" };
const unreadable = { kind: "unreadable" };
const error = (code: string) => ({ kind: "error", error: code });

class RuntimeError {
  constructor(readonly code: unknown) {}
}

const forms: readonly (readonly [what: string, raw: unknown, cell: object])[] = [
  ["no value", undefined, nothing],
  ["null", null, nothing],
  ["the call's own object", { functionName: "X" }, nothing],
  ["the same with a way to answer", { setResult: () => undefined }, nothing],
  ["an empty text", "", empty],
  ["white space", " \t\n", empty],
  ["zero", 0, empty],
  ["a text", " a ", { kind: "text", text: " a " }],
  ["a figure", -2.5, { kind: "number", value: -2.5 }],
  ["a figure that is none", Number.NaN, unreadable],
  ["a figure without end", Number.POSITIVE_INFINITY, unreadable],
  ["true", true, { kind: "boolean", value: true }],
  ["false", false, { kind: "boolean", value: false }],
  ["an error value", { type: "Error", basicValue: "#DIV/0!" }, error("#DIV/0!")],
  [
    "an error by its basic type",
    { type: "Custom", basicType: "Error", basicValue: "#N/A" },
    error("#N/A"),
  ],
  ["an error that does not say which", { type: "Error" }, error("#VALUE!")],
  ["an error in other words", { type: "Error", basicValue: "DIV" }, error("#VALUE!")],
  ["an error of the runtime", new RuntimeError("#REF!"), error("#REF!")],
  ["a code that is no error", new RuntimeError("REF"), unreadable],
  ["a code that is no text", new RuntimeError(7), unreadable],
  ["a rich empty cell", { type: "Empty", basicType: "Empty", basicValue: "" }, empty],
  ["an empty cell by its type alone", { type: "Empty", basicValue: 3 }, empty],
  [
    "a formatted figure",
    { type: "FormattedNumber", basicValue: 2.5 },
    { kind: "number", value: 2.5 },
  ],
  ["a rich text", { type: "String", basicValue: "KOH" }, { kind: "text", text: "KOH" }],
  ["a rich boolean", { type: "Boolean", basicValue: false }, { kind: "boolean", value: false }],
  ["a rich value of nothing", { type: "Custom", basicValue: null }, nothing],
  ["a rich value in a rich value", { basicValue: { basicValue: 2 } }, unreadable],
  ["an object that says nothing", {}, unreadable],
  ["rows of cells", [[1]], unreadable],
  ["an empty list", [], unreadable],
  ["a function", () => 1, unreadable],
  ["a symbol", Symbol("x"), unreadable],
  ["a large integer", 5n, unreadable],
];

describe("a cell, as a host hands it over", () => {
  it.each(forms)("%s", (_, raw, cell) => {
    expect(readCell(raw)).toEqual(cell);
  });

  it("is not there in rows that hold none", () => {
    expect(readGrid([[]])).toEqual({ rows: 1, columns: 0, cells: [], leftOut: false });
    expect(readGrid([])).toEqual({ rows: 0, columns: 0, cells: [], leftOut: false });
    expect(readGrid([[1], [2, 3]])).toMatchObject({ rows: 2, columns: 2 });
  });
});

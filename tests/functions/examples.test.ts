import { describe, expect, it } from "vitest";
import { isProblem } from "../../src/core/problem/problem";
import { say } from "../../src/core/problem/wording";
import { catalogue } from "../../src/functions/catalogue";
import { namespace } from "../../src/functions/names";
import { evaluateFormula } from "./evaluate-formula";
import { titreCalls } from "../../src/sheet/formula/walk";
import { treeOf } from "../sheet/formula/trees";

type Given = number | string | boolean;

/** A figure of eight digits or more may have been rounded to them; a shorter one is exact. */
const fewestRounded = 8;

/** Beyond these a double has noise. */
const mostSure = 15;

const digitsOf = (figure: number): number =>
  String(Math.abs(figure)).replace(/e.*/, "").replace(".", "").replace(/^0+/, "").length;

/** The digits given, rounded; of an exact figure, and of more digits, what a double can hold. */
function isGiven(found: number, figure: number): boolean {
  const digits = digitsOf(figure);
  return digits >= fewestRounded && digits <= mostSure
    ? Number(found.toPrecision(digits)) === figure
    : Math.abs(found - figure) <= Math.abs(figure) * 5e-16;
}

function expectCell(found: unknown, given: Given, where: string): void {
  if (typeof given !== "number") {
    expect(found, where).toBe(given);
    return;
  }
  if (typeof found !== "number") throw new Error(`${where}: ${String(found)} is not a number`);
  expect(isGiven(found, given), `${where}: ${found} for ${given}`).toBe(true);
}

describe("the example of every function", () => {
  it.each(catalogue)("$id calls that function", ({ id, example }) => {
    const called = titreCalls(treeOf(example.formula)).map((call) => call.name);
    expect(called).toEqual([`${namespace}.${id}`]);
  });

  it.each(catalogue)("$id gives what it says, to the digits given", ({ id, example }) => {
    const found = evaluateFormula(example.formula);
    if (isProblem(found)) throw new Error(say(found));
    if (!Array.isArray(example.gives)) {
      expectCell(found, example.gives as Given, id);
      return;
    }
    const rows = example.gives as readonly (readonly Given[])[];
    if (!Array.isArray(found)) throw new Error(`${id} does not spill`);
    // Of a long table the first rows may stand for all; every row has every column.
    expect(found.length).toBeGreaterThanOrEqual(rows.length);
    expect(found.every((row) => row.length === rows[0]?.length)).toBe(true);
    for (const [row, cells] of rows.entries()) {
      for (const [column, cell] of cells.entries()) {
        expectCell(found[row]?.[column], cell, `${id} row ${row + 1} column ${column + 1}`);
      }
    }
  });
});

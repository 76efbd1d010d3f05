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

/** Half a unit of the last digit given, and what a double cannot hold; for an exact figure, that alone. */
function tolerance(figure: number): number {
  const [digits = "", exponent = "0"] = String(Math.abs(figure)).split("e");
  const [whole = "", decimals = ""] = digits.split(".");
  const significant = (whole + decimals).replace(/^0+/, "").length;
  const rounded = 0.5 * 10 ** (Number(exponent) - decimals.length);
  return (significant >= fewestRounded ? rounded : 0) + Math.abs(figure) * 4e-16 + Number.MIN_VALUE;
}

function expectCell(found: unknown, given: Given, where: string): void {
  if (typeof given !== "number") {
    expect(found, where).toBe(given);
    return;
  }
  if (typeof found !== "number") throw new Error(`${where}: ${String(found)} is not a number`);
  expect(Math.abs(found - given), `${where}: ${found} for ${given}`).toBeLessThanOrEqual(
    tolerance(given),
  );
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

/** The functions of the finished fuel, beside a plain program that knows nothing of ours (from-python.py). */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { call } from "../functions/outcome";

type Row = readonly [id: string, given: readonly unknown[], answer: unknown];
const rows = JSON.parse(
  readFileSync(new URL("fixtures/fuel.json", import.meta.url), "utf8"),
) as readonly Row[];

/** The figures of a table of label, figure, unit; rows of words left out. */
const figuresOf = (table: readonly unknown[][]): unknown[] =>
  table.map(([, figure]) => figure).filter((figure) => typeof figure === "number");

function isSame(found: unknown, wanted: unknown): boolean {
  if (typeof wanted === "string") return String(found).startsWith(wanted);
  if (!Array.isArray(wanted)) {
    return Math.abs(Number(found) - Number(wanted)) <= 1e-12 * Math.abs(Number(wanted));
  }
  const cells = Array.isArray(found) ? (found as unknown[]) : [];
  return cells.length === wanted.length && wanted.every((each, at) => isSame(cells[at], each));
}

function found([id, given, wanted]: Row): unknown {
  const seen = call(id, ...given);
  if ("error" in seen) return seen.error;
  const isFigures = Array.isArray(wanted) && !Array.isArray(wanted[0]);
  return isFigures ? figuresOf(seen.value as unknown[][]) : seen.value;
}

const ids = [...new Set(rows.map(([id]) => id))];

describe("random calls beside a plain program", () => {
  it("are of every function of fuel, water, warmth and probe", () => {
    expect(ids.sort()).toEqual(
      "AGAINSTLIMIT CONVERSION ENDPOINT FUELCATALYST FUELMETAL FUELSOAP GLYCEROL LOSSONHEATING STEEPNESS TEMPERATURERISE WATERBALANCE WATERFROMGAS".split(
        " ",
      ),
    );
  });

  it.each(ids)("%s agrees to 1e-12, and refuses where that refuses", (id) => {
    const own = rows.filter((row) => row[0] === id);
    expect(own.length).toBeGreaterThanOrEqual(60);
    const wrong = own.filter((row) => !isSame(found(row), row[2]));
    expect(wrong.map((row) => [row, found(row)])).toEqual([]);
  });
});

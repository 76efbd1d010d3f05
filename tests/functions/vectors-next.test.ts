/**
 * The checked inputs and answers of the interface as it is to be, made by an independent program and
 * by hand. Functions that are not built yet are counted and named, so that none is passed over in
 * silence.
 */
import { describe, expect, it } from "vitest";
import { functionNamed } from "../../src/functions/catalogue";
import vectors from "../vectors-next.json";
import { call, type Seen } from "./outcome";

interface Vector {
  readonly fn: string;
  readonly args: readonly unknown[];
  readonly expect: unknown;
  readonly within: number | "begins";
  readonly why: string;
}

const all = vectors as Vector[];

/** Functions not built yet, with how many vectors wait for each. */
const waiting: Record<string, number> = {
  FUELSOAP: 3,
  FUELCATALYST: 1,
  FUELMETAL: 3,
  GLYCEROL: 1,
  CONVERSION: 2,
  LOSSONHEATING: 2,
  WATERFROMGAS: 1,
  WATERBALANCE: 3,
  TEMPERATURERISE: 2,
  ENDPOINT: 4,
  STEEPNESS: 1,
  AGAINSTLIMIT: 3,
};

/** What a cell hands over: null inside a list is an empty cell, alone it is left out. */
const seenOf = ({ fn, args }: Vector): Seen => call(fn, ...args);

const near = (found: unknown, wanted: number, within: number): boolean =>
  typeof found === "number" && Math.abs(found - wanted) <= within * Math.abs(wanted);

function isSame(found: unknown, wanted: unknown, within: Vector["within"]): boolean {
  if (typeof wanted === "number") return near(found, wanted, Number(within));
  if (!Array.isArray(wanted)) {
    return within === "begins" ? String(found).startsWith(String(wanted)) : found === wanted;
  }
  const cells = Array.isArray(found) ? (found as unknown[]) : [];
  return (
    cells.length === wanted.length &&
    wanted.every((each, place) => isSame(cells[place], each, within))
  );
}

/** A flat list is held against the figures in the second column of a table, words left out. */
function agrees(found: unknown, wanted: unknown, within: Vector["within"]): boolean {
  const isFlat = Array.isArray(wanted) && !Array.isArray(wanted[0]);
  if (!isFlat || !Array.isArray(found)) return isSame(found, wanted, within);
  const second = (found as unknown[][]).map((row) => row[1]);
  return isSame(
    second.filter((cell) => typeof cell === "number"),
    wanted,
    within,
  );
}

function isRight(vector: Vector): boolean {
  const seen = seenOf(vector);
  const { expect: wanted, within } = vector;
  if (typeof wanted === "object" && wanted !== null && "error" in wanted) {
    return "error" in seen && seen.error === wanted.error;
  }
  return "value" in seen && agrees(seen.value, wanted, within);
}

const built = all.filter(({ fn }) => functionNamed(fn));
const titled = built.map((vector) => ({ ...vector, title: `${vector.fn}: ${vector.why}` }));

describe("the checked inputs and answers", () => {
  it("wait for the functions that are not built yet, and for no others", () => {
    const counted: Record<string, number> = {};
    for (const { fn } of all) {
      if (!functionNamed(fn)) counted[fn] = (counted[fn] ?? 0) + 1;
    }
    expect(counted).toEqual(waiting);
  });

  it("are all there", () => {
    expect(all).toHaveLength(187);
  });

  it.each(titled)("hold for $title", (vector) => {
    expect(isRight(vector), JSON.stringify(seenOf(vector))).toBe(true);
  });
});

/**
 * The checked inputs and answers of the interface, made by an independent program and by hand, and when
 * an answer is one. Asked of the functions, of the built file, and of cells.
 */
import { functionNamed } from "../src/functions/catalogue";
import all from "./vectors.json";

export interface Vector {
  readonly fn: string;
  readonly args: readonly unknown[];
  readonly expect: unknown;
  readonly within: number | "begins";
  readonly why: string;
}

export const vectors = all as readonly Vector[];

/** Of the functions that are built. */
export const built = vectors.filter(({ fn }) => functionNamed(fn));

/** A flat list is held against the figures in the second column of a table, words left out. */
export const isOfFigures = ({ expect: wanted }: Vector): boolean =>
  Array.isArray(wanted) && !Array.isArray(wanted[0]);

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

/** What a call gave, or the code of its error. */
export type Seen = { readonly value: unknown } | { readonly error: string };

export function isRight(seen: Seen, vector: Vector): boolean {
  const { expect: wanted, within } = vector;
  if (typeof wanted === "object" && wanted !== null && "error" in wanted) {
    return "error" in seen && seen.error === wanted.error;
  }
  if (!("value" in seen)) return false;
  const { value } = seen;
  if (!isOfFigures(vector) || !Array.isArray(value)) return isSame(value, wanted, within);
  const second = (value as unknown[][]).map((row) => row[1]);
  return isSame(
    second.filter((cell) => typeof cell === "number"),
    wanted,
    within,
  );
}

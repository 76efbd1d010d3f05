/** A function on plain values as a function of the embedded engine, cell by cell where it is handed more. */
import { ArrayValueObject, BaseFunction, type BaseValueObject } from "@univerjs/engine-formula";
import type { EngineFunction } from "../adapter";
import { type Cell, Fault, type Given, givenOf, objectOf, type Rows } from "./value";

type Answer = Cell | Rows;

export interface Standard {
  readonly least: number;
  readonly most: number;
  /** For each argument: one value (v), or a range read whole (l); the last goes for all that follow. */
  readonly kinds: string;
  readonly work: (given: readonly Given[]) => Answer;
  /** Where the first is one value, the others are handed on whole. */
  readonly isChoice?: boolean;
}

function arrayOf(rows: Rows): BaseValueObject {
  const [first = []] = rows;
  if (rows.length === 1 && first.length === 1) return objectOf(first[0] ?? null);
  return ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map(objectOf)),
    rowCount: rows.length,
    columnCount: first.length,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

const answered = (answer: Answer): BaseValueObject =>
  Array.isArray(answer) ? arrayOf(answer as Rows) : objectOf(answer as Cell);

const one = (cell: Cell): Given => ({
  rows: [[cell]],
  isRange: false,
  isOne: true,
  isOmitted: false,
});

/** The value of a block at a place of a larger one: a single row or column goes for all. */
function at({ rows }: Given, row: number, column: number): Cell {
  const line = rows.length === 1 ? rows[0] : rows[row];
  if (!line || (line.length > 1 && column >= line.length)) return new Fault("#N/A");
  return line[line.length === 1 ? 0 : column] ?? null;
}

function caught(work: () => Answer): Answer {
  try {
    return work();
  } catch (error) {
    if (error instanceof Fault) return error;
    throw error;
  }
}

const single = (answer: Answer): Cell =>
  Array.isArray(answer) ? ((answer as Rows)[0]?.[0] ?? null) : (answer as Cell);

function worked({ isChoice, work, ...standard }: Standard, given: readonly Given[]): Answer {
  const kinds = isChoice && given[0]?.isOne ? "vl" : standard.kinds;
  const isValue = (place: number) => (kinds[place] ?? kinds.at(-1)) === "v";
  const many = given.filter((each, place) => isValue(place) && !each.isOne);
  if (many.length === 0) return caught(() => work(given));
  const rowCount = Math.max(...many.map(({ rows }) => rows.length));
  const columnCount = Math.max(...many.map(({ rows }) => rows[0]?.length ?? 0));
  return Array.from({ length: rowCount }, (_, row) =>
    Array.from({ length: columnCount }, (__, column) =>
      single(
        caught(() =>
          work(
            given.map((each, place) =>
              isValue(place) && !each.isOne ? one(at(each, row, column)) : each,
            ),
          ),
        ),
      ),
    ),
  );
}

export function standardFunction(standard: Standard): EngineFunction {
  return class extends BaseFunction {
    override minParams = standard.least;
    override maxParams = standard.most;

    /** "5%" between quotation marks is text. */
    override isArgumentsIgnoreNumberPattern(): boolean {
      return true;
    }

    override calculate(...given: BaseValueObject[]): BaseValueObject {
      return answered(worked(standard, given.map(givenOf)));
    }
  };
}

const many = 255;

/** One value for each of its arguments. */
export const ofValues = (
  least: number,
  most: number,
  work: (...cells: Cell[]) => Answer,
): Standard => ({
  least,
  most,
  kinds: "v",
  work: (given) => work(...given.map(({ rows }) => rows[0]?.[0] ?? null)),
});

/** Any number of ranges and values. */
export const ofLists = (work: (given: readonly Given[]) => Answer): Standard => ({
  least: 1,
  most: many,
  kinds: "l",
  work,
});

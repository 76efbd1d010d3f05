/**
 * The blocks of cells that formulas are handed. The engine reads a block once and hands the same array to
 * every formula that refers to it, and some of its functions sort or reverse what they are handed: here
 * the rows are frozen, and whoever would change them is given a copy. It also looks comparisons up in
 * an index of each column in which 0, an empty cell and "" are one, and TRUE and "true" another: here
 * each cell is compared itself.
 */
import {
  ArrayValueObject,
  type BaseValueObject,
  CELL_INVERTED_INDEX_CACHE,
  FORMULA_REF_TO_ARRAY_CACHE,
} from "@univerjs/engine-formula";

const nothingIndexed = () => ({ rowsInCache: [], rowsNotInCache: [] });

function freeze(array: ArrayValueObject): void {
  const rows = array.getArrayValue();
  for (const row of rows) Object.freeze(row);
  Object.freeze(rows);
}

let isDone = false;

/** Once for the page: these belong to the engine's module, not to one engine. */
export function protectArrays(): void {
  if (isDone) return;
  isDone = true;
  CELL_INVERTED_INDEX_CACHE.canUseCache = nothingIndexed;
  const keep = FORMULA_REF_TO_ARRAY_CACHE.set.bind(FORMULA_REF_TO_ARRAY_CACHE);
  FORMULA_REF_TO_ARRAY_CACHE.set = (name, array) => {
    freeze(array);
    keep(name, array);
  };
}

/** One that may be changed. */
export const copied = (given: BaseValueObject): BaseValueObject => {
  if (!given.isArray()) return given;
  const array = given as ArrayValueObject;
  return ArrayValueObject.create({
    calculateValueList: array.getArrayValue().map((row) => [...row]),
    rowCount: array.getRowCount(),
    columnCount: array.getColumnCount(),
    unitId: array.getUnitId(),
    sheetId: array.getSheetId(),
    row: array.getCurrentRow(),
    column: array.getCurrentColumn(),
  });
};

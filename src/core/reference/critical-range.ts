/** Factors of the critical range, 95 %, as printed (ISO 5725-6:1994, Table 1, commonly cited). */
export const criticalRangeFactors: ReadonlyMap<number, number> = new Map([
  [2, 2.8],
  [3, 3.3],
  [4, 3.6],
  [5, 3.9],
  [6, 4.0],
  [7, 4.2],
  [8, 4.3],
  [9, 4.4],
  [10, 4.5],
]);

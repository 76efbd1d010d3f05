/** Scatter of a column of helper cells. */

/** Figures that differ by less than this part of them are equal: a rounding error lies between. */
const equal = "1E-14";

export const areEqual = (column: string): string =>
  `MAX(${column})-MIN(${column})<=${equal}*MAX(${column})`;

/** Sum of squares about the mean, in two passes; exactly 0 when all are equal. */
export const squaresAbout = (column: string): string =>
  `IF(${areEqual(column)},0,DEVSQ(${column}))`;

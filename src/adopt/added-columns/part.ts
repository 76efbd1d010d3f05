/** A part of a formula, for a row counted from 1. */
export type Part = (row: number) => string;

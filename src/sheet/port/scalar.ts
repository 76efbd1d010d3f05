/** What a cell holds that shows no error; "" where there is nothing. */
export type CellScalar = string | number | boolean;

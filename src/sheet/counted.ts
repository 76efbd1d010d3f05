/**
 * How many of what, in words for a person; no mark between thousands, which may be read as a decimal mark.
 * @example counted(1, "row") // "1 row"; counted(12000, "formula") // "12000 formulas"
 */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${String(count)} ${count === 1 ? one : many}`;

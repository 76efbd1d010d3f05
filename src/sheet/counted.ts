/**
 * How many of what, in words for a person.
 * @example counted(1, "row") // "1 row"; counted(12000, "formula") // "12,000 formulas"
 */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count.toLocaleString("en-GB")} ${count === 1 ? one : many}`;

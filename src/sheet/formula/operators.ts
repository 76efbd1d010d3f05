/**
 * Which operator binds tighter, as spreadsheets have it: a minus before a figure binds tighter than a
 * power, so that -2^2 is 4. All pair from the left: 2^3^2 is 64.
 */
export const strength = {
  comparison: 1,
  joining: 2,
  adding: 3,
  multiplying: 4,
  power: 5,
  percent: 6,
  prefix: 7,
  union: 8,
  intersection: 9,
  range: 10,
  spill: 11,
  whole: 12,
} as const;

const table: Readonly<Record<string, number>> = {
  "=": strength.comparison,
  "<": strength.comparison,
  ">": strength.comparison,
  "<=": strength.comparison,
  ">=": strength.comparison,
  "<>": strength.comparison,
  "&": strength.joining,
  "+": strength.adding,
  "-": strength.adding,
  "*": strength.multiplying,
  "/": strength.multiplying,
  "^": strength.power,
  ",": strength.union,
  " ": strength.intersection,
  ":": strength.range,
};

/** How tightly a sign between two values binds; undefined for anything else. */
export const binaryStrength = (sign: string): number | undefined =>
  Object.hasOwn(table, sign) ? table[sign] : undefined;

/** The signs that join references and nothing else. */
export const joinsReferences = (sign: string): boolean => /^[, :]$/.test(sign);

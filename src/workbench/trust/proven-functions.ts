/**
 * The functions of spreadsheet programs whose results the page may write into a file: each gives what
 * LibreOffice gives from the same arguments, as tests/spreadsheet/proven-functions.test.ts shows with
 * arguments chosen to be awkward. What is not here is not worked out.
 */

/**
 * How each argument is read. `v`: one value. `l`: a range or a list, read whole. `a`: the same, and
 * what is written there is worked out cell by cell. `p`: handed on as it is. The last but one sign is
 * repeated where a star ends the row of signs.
 */
export type Arguments = string;

const rows: Readonly<Record<Arguments, string>> = {
  "": "NA PI TRUE FALSE",
  v: "ABS SQRT INT LEN TRIM UPPER LOWER CLEAN ISNUMBER ISTEXT ISBLANK ISERROR ISNA ISLOGICAL ISERR NOT N EXP LN LOG10 SIGN YEAR MONTH DAY",
  vv: "ROUND ROUNDUP ROUNDDOWN MOD POWER MROUND EXACT IFERROR TEXT",
  vvv: "DATE MID",
  vvvv: "SUBSTITUTE",
  "v*": "CONCATENATE",
  vpp: "IF",
  "vp*": "CHOOSE",
  "l*": "SUM AVERAGE COUNT COUNTA MIN MAX SUMSQ DEVSQ STDEV STDEV.S STDEV.P STDEVP VAR VAR.S AND OR GCD",
  lv: "SMALL LARGE COUNTIF",
  lvl: "SUMIF AVERAGEIF",
  lvv: "INDEX",
  vlv: "MATCH",
  vlvv: "VLOOKUP HLOOKUP",
  "a*": "SUMPRODUCT LOOKUP",
};

/** These give an array where an array is worked out, cell by cell. */
const cellByCell = new Set(
  "ABS SQRT INT LEN TRIM UPPER LOWER CLEAN ISNUMBER ISTEXT ISBLANK ISERROR ISNA ISLOGICAL NOT ROUND MOD IF".split(
    " ",
  ),
);

/** @example argumentsOf.get("ROUND") // "vv" */
export const argumentsOf: ReadonlyMap<string, Arguments> = new Map(
  Object.entries(rows).flatMap(([kinds, names]) =>
    names.split(" ").map((name) => [name, kinds] as const),
  ),
);

export const worksCellByCell = (name: string): boolean => cellByCell.has(name);

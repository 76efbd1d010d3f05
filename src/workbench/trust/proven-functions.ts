/**
 * The functions of spreadsheet programs whose results the page may write into a file: each gives what
 * LibreOffice gives from the same arguments, as tests/spreadsheet/proven-functions.test.ts shows with
 * arguments chosen to be awkward. What is not here is not worked out.
 */

/**
 * How each argument is read. `v`: one value. `l`: a range or a list, read whole. `a`: the same, and
 * what is written there is worked out cell by cell. `p`: handed on as it is. What may be left out has a question mark; what a
 * star follows may come again and again.
 */
export interface Argument {
  readonly sign: string;
  readonly isOptional: boolean;
  readonly isRepeated: boolean;
}

const rows: Readonly<Record<string, string>> = {
  "": "NA PI TRUE FALSE TODAY NOW",
  v: "ABS SIGN SQRT EXP LN LOG10 INT LEN TRIM CLEAN UPPER LOWER ISNUMBER ISTEXT ISNONTEXT ISBLANK ISERROR ISERR ISNA ISLOGICAL NOT N YEAR MONTH DAY VALUE HOUR MINUTE SECOND",
  "vv?": "WEEKDAY ROUND ROUNDUP ROUNDDOWN TRUNC LOG LEFT RIGHT",
  vv: "TEXT TINV MOD POWER MROUND EXACT IFERROR IFNA DAYS EDATE EOMONTH CEILING FLOOR",
  vvv: "DATE MID TDIST FDIST TIME CONVERT",
  "vp?p?": "IF",
  "vv?v?": "FIXED",
  "v?": "ROW COLUMN",
  "vvv?": "FIND SEARCH",
  "vvvv?": "SUBSTITUTE",
  "v*": "CONCATENATE",
  "vv*": "CHOOSE",
  "l*": "SUM PRODUCT AVERAGE MEDIAN COUNT COUNTA MIN MAX SUMSQ DEVSQ STDEV STDEV.S STDEV.P STDEVP VAR VAR.S VAR.P VARP AND OR GCD",
  l: "COUNTBLANK ROWS COLUMNS",
  ll: "SLOPE INTERCEPT",
  vll: "FORECAST FORECAST.LINEAR",
  "vl*": "SUBTOTAL",
  lv: "SMALL LARGE COUNTIF PERCENTILE PERCENTILE.INC QUARTILE QUARTILE.INC",
  "lvl?v?l?v?l?v?": "COUNTIFS",
  "lvl?": "SUMIF AVERAGEIF",
  "llvl?v?l?v?l?v?": "SUMIFS AVERAGEIFS MINIFS MAXIFS",
  "lvv?": "INDEX",
  "vlv?": "MATCH RANK RANK.EQ",
  "vlvv?": "VLOOKUP HLOOKUP",
  "vaa?": "LOOKUP",
  "a*": "SUMPRODUCT",
};

/** These give an array where an array is worked out, cell by cell. */
const cellByCell = new Set(
  "ABS SQRT INT LEN TRIM CLEAN UPPER LOWER ISNUMBER ISTEXT ISBLANK ISERROR ISNA ISLOGICAL NOT N ROUND MOD EXACT LEFT RIGHT MID SUBSTITUTE YEAR MONTH DAY IF IFERROR POWER LOG10".split(
    " ",
  ),
);

const read = (kinds: string): Argument[] =>
  [...kinds.matchAll(/([vlap])([?*]?)/g)].map(([, sign = "", mark]) => ({
    sign,
    isOptional: mark === "?",
    isRepeated: mark === "*",
  }));

/** @example argumentsOf.get("ABS") // [{ sign: "v", isOptional: false, isRepeated: false }] */
export const argumentsOf: ReadonlyMap<string, readonly Argument[]> = new Map(
  Object.entries(rows).flatMap(([kinds, names]) =>
    names.split(" ").map((name) => [name, read(kinds)] as const),
  ),
);

export const worksCellByCell = (name: string): boolean => cellByCell.has(name);

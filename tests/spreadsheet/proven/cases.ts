/** Formulas with awkward arguments, for each function that is to be proven and for the operators. */
import { type Argument, argumentsOf } from "../../../src/workbench/trust/proven-functions";
import { blockOf, rangeOf, ranges, singleCells } from "./inputs";

const literals = ['""', '"Oil"', '"2.5"', "TRUE", "0", "3", "-2.5", "1.005", "NA()"];
const values = [...singleCells, ...literals];
/** Where two or three values meet: fewer of each. */
const few = [
  ...[0, 1, 2, 3, 9, 12, 13, 14, 16, 17, 18, 19, 22, 23, 24, 28, 30].map(
    (at) => singleCells[at] ?? "",
  ),
  '"Oil"',
  "3",
];
const fewest = ["", ...[0, 2, 12, 14, 16, 18, 19, 22].map((at) => singleCells[at] ?? "")];
const lists = [...ranges, blockOf(0, 2), blockOf(4, 3), "{1,2;3,4}", "In!$A$1", "In!$A$19"];

function pool(sign: string, count: number): readonly string[] {
  if (sign === "l" || sign === "a") return lists;
  if (count === 1) return values;
  return count === 2 ? few : fewest;
}

const across = (pools: readonly (readonly string[])[]): string[][] =>
  pools.reduce<string[][]>(
    (found, next) => found.flatMap((before) => next.map((each) => [...before, each])),
    [[]],
  );

/** With all that may be left out, and with nothing of it. */
function signsOf(known: readonly Argument[]): readonly (readonly string[])[] {
  const all = known.map(({ sign }) => sign).slice(0, 4);
  const least = known.filter(({ isOptional }) => !isOptional).map(({ sign }) => sign);
  const last = known.at(-1);
  return last?.isRepeated
    ? [all, [...all, last.sign]]
    : [all, ...(least.length < all.length ? [least] : [])];
}

/** Asked by hand: months by the million keep the other program busy for minutes. */
const isByHand = (name: string): boolean =>
  /^(?:E(?:DATE|OMONTH)|TEXT|FIXED|TINV|TDIST|FDIST|ROW|COLUMN|NOW|SUBTOTAL|CONVERT)$/.test(name);

const monthEnds = ["In!$A$31", "In!$A$32", "45322", "45382", "44255", "36585", "In!$A$5", '"2.5"'];
const written = (): string[] => [
  ...across([
    [...singleCells, "1234567.891", "-1234.5", "0.005", "-0.004", "999.995", "0.125", "1/3"],
    [
      '"0"',
      '"0.0"',
      '"0.00"',
      '"0.000"',
      '"0%"',
      '"0.0%"',
      '"#,##0"',
      '"#,##0.00"',
      '"yyyy-mm-dd"',
    ],
  ]).map((pair) => `TEXT(${pair.join(",")})`),
  ...across([
    [...singleCells, "1234567.891", "0.005", "999.995"],
    ["0", "2", "4"],
    ["", "TRUE"],
  ]).map((three) => `FIXED(${three.filter((each) => each !== "").join(",")})`),
  ...across([
    ["0.05", "0.01", "0.3174", "0.9", "1E-9"],
    ["1", "2", "3", "7.9", "30", "200"],
  ]).map((pair) => `TINV(${pair.join(",")})`),
  ...across([
    ["0", "0.5", "2.353", "4.3", "31.8"],
    ["1", "2", "3", "9.5", "60"],
    ["1", "2"],
  ]).map((three) => `TDIST(${three.join(",")})`),
  ...across([
    ["0", "0.5", "2.353", "4.3", "31.8"],
    ["1", "2", "3", "9.5"],
    ["1", "2", "15", "20.9"],
  ]).map((three) => `FDIST(${three.join(",")})`),
  "ROW()",
  "ROW(In!$A$19)",
];

const byMonths = (): string[] =>
  ["EDATE", "EOMONTH"].flatMap((name) =>
    across([monthEnds, ["0", "1", "-1", "11", "12", "-13", "1.9", "-1.9", "In!$A$1"]]).map(
      (pair) => `${name}(${pair.join(",")})`,
    ),
  );

/** A day or a time would be shown as one: as a figure it shows all its digits. */
const isDated = (name: string): boolean => /^(?:TODAY|TIME)$/.test(name);

const calls = (name: string, known: readonly Argument[]): string[] =>
  signsOf(known).flatMap((signs) =>
    across(signs.map((sign) => pool(sign, signs.length))).map(
      (given) => `${name}(${given.join(",")})${isDated(name) ? "*1" : ""}`,
    ),
  );

const signs = ["+", "-", "*", "/", "^", "&", "=", "<>", "<", ">", "<=", ">="];

const operators = (): string[] => [
  ...signs.flatMap((sign) => across([few, few]).map((pair) => pair.join(sign))),
  ...values.flatMap((value) => [`-${value}`, `+${value}`, `${value}%`, value]),
  "-2^2",
  "2^3^2",
  "-In!$A$19^2",
  "1+2&3",
  "2*3%",
  "0.1+0.2-0.3",
  "(0.1+0.2)=0.3",
  "1-0.9-0.1",
  "(1-0.9-0.1)=0",
  "1E+308*10",
  "0^0",
  "(-8)^(1/3)",
];

const criteria = [
  '"Oil"',
  '"oil*"',
  '"?"',
  '"~?"',
  '"a~*"',
  '"*"',
  '"<>"',
  '"="',
  '""',
  '"<>Oil"',
  '">2"',
  '"<=2.5"',
  '">b"',
  '"=2.5"',
  '"2.5"',
  "2.5",
  "0",
  "TRUE",
  '"TRUE"',
  '">"&In!$A$18',
  "In!$A$1",
  "In!$A$2",
  "In!$A$15",
  '"=*l*"',
  '"<>*l*"',
  '">=45322"',
];

const byHand = (): string[] => [
  ...byMonths(),
  ...ranges.flatMap((range) =>
    criteria.flatMap((criterion) => [
      `COUNTIF(${range},${criterion})`,
      `SUMIF(${range},${criterion},${rangeOf(0)})`,
      `SUMIF(${range},${criterion})`,
      `AVERAGEIF(${range},${criterion},${rangeOf(9)})`,
      `COUNTIFS(${range},${criterion},${rangeOf(0)},">0")`,
      `SUMIFS(${rangeOf(0)},${range},${criterion})`,
      `AVERAGEIFS(${rangeOf(0)},${range},${criterion})`,
    ]),
  ),
];

const unitsOf = [
  ["g", "mg", "kg"],
  ["l", "L", "ml", "mL", "m3", "gal", "qt", "pt"],
  ["m", "mm", "cm", "in", "ft"],
  ["sec", "s", "mn", "min", "hr", "day", "d"],
  ["C", "F", "K"],
];

const conversions = (): string[] => [
  ...unitsOf.flatMap((units) =>
    across([["1", "2.5", "-40", "In!$A$4"], units, units]).map(
      ([figure = "", from = "", to = ""]) => `CONVERT(${figure},"${from}","${to}")`,
    ),
  ),
  ...["", "In!$A$3", "In!$A$15", "TRUE"].map((figure) => `CONVERT(${figure || "0"},"kg","g")`),
  'CONVERT(1,"kg","l")',
  'CONVERT(1,"furlong","m")',
  'CONVERT(1,"lbm","kg")',
  'CONVERT(1,"ozm","g")',
  'CONVERT(1,"KG","g")',
  'CONVERT(1,In!$A$1,"g")',
];

const subtotals = (): string[] =>
  across([
    [
      ...Array.from({ length: 11 }, (_, at) => [String(at + 1), String(at + 101)]).flat(),
      "12",
      "0",
    ],
    [...ranges, blockOf(0, 2), `${rangeOf(0)},${rangeOf(5)}`, "In!$A$1", "In!$A$19"],
  ]).map((pair) => `SUBTOTAL(${pair.join(",")})`);

/** By the clock, and about places. */
const clockAndPlaces = (): string[] => [
  "(TODAY()-45351)*1",
  "INT(NOW())*1",
  "INT(NOW())=TODAY()",
  "YEAR(TODAY())*100+MONTH(NOW())",
  "WEEKDAY(TODAY(),2)",
  "COLUMN()",
  "COLUMN(In!$C$1)",
  "ROWS(In!$A$1:$A$5000)",
  "COLUMNS(In!$A$1:$AZ$2)",
  "ROWS({1,2;3,4})",
  "COLUMNS({1,2;3,4})",
  "ROWS(In!$A$15)",
  "HOUR(In!$A$32)",
  ...across([
    ["HOUR", "MINUTE", "SECOND"],
    ["0.999988", "0.75", "45322.503472222", "1/3", "0.04167"],
  ]).map(([name = "", serial = ""]) => `${name}(${serial})`),
  ...across([
    ["6", "23", "24", "0"],
    ["0", "30", "59.9", "61"],
    ["0", "15", "75"],
  ]).map((three) => `TIME(${three.join(",")})*1`),
  ...across([
    ["CEILING", "FLOOR"],
    ["0.3", "2.5", "10", "7.05", "0"],
    ["0.1", "0.05", "1", "2.5", "0"],
  ]).map(([name = "", figure = "", by = ""]) => `${name}(${figure},${by})`),
  ...across([
    ["QUARTILE", "QUARTILE.INC"],
    ranges.slice(0, 6),
    ["0", "1", "2", "3", "4", "5", "-1"],
  ]).map(([name = "", list = "", which = ""]) => `${name}(${list},${which})`),
  ...across([
    ["PERCENTILE", "PERCENTILE.INC"],
    ranges.slice(0, 6),
    ["0", "0.1", "0.9", "1", "1.1"],
  ]).map(([name = "", list = "", which = ""]) => `${name}(${list},${which})`),
];

/** As many as one file can hold for the other program to work out in its time. */
const thinned = (formulas: readonly string[], most: number): string[] => {
  const step = Math.max(1, formulas.length / most);
  return formulas.filter((_, at) => Math.floor(at / step) !== Math.floor((at - 1) / step));
};

export const casesOf = (most: number): ReadonlyMap<string, readonly string[]> =>
  new Map(
    [
      ["operators", operators()] as const,
      ["criteria and months", byHand()] as const,
      ["written figures and Student's t", written()] as const,
      ["units", conversions()] as const,
      ["subtotals", subtotals()] as const,
      ["the clock, places and steps", clockAndPlaces()] as const,
      ...[...argumentsOf]
        .filter(([name]) => !isByHand(name))
        .map(([name, known]) => [name, calls(name, known)] as const),
    ].map(([name, formulas]) => [name, thinned(formulas as string[], most)] as const),
  );

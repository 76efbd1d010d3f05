/** Figures from figures: roots, logarithms, rounding to what a person sees. */
import { ofLists, ofValues, type Standard } from "./adapter";
import { doubt } from "./doubt";
import { quotient } from "./operators";
import { seen } from "./compare";
import { number, numbers } from "./convert";
import { Fault, type Given } from "./value";

const ofOne = (work: (figure: number) => number): Standard =>
  ofValues(1, 1, (cell = null) => work(number(cell)));

const within =
  (isAllowed: (figure: number) => boolean, work: (figure: number) => number) =>
  (figure: number): number => {
    if (!isAllowed(figure)) throw new Fault("#NUM!");
    return work(figure);
  };

const isPositive = (figure: number): boolean => figure > 0;

/** A figure with its decimal point moved, as it is written: 1.005 by 2 is 100.5 and not a hair less. */
function moved(figure: number, places: number): number {
  const [digits = "", exponent = "0"] = String(figure).split("e");
  return Number(`${digits}e${String(Number(exponent) + places)}`);
}

type Whole = (figure: number) => number;

export function rounded(figure: number, places: number, whole: Whole): number {
  const digits = Math.trunc(places);
  if (Math.abs(digits) > 20) {
    doubt();
    return digits > 0 ? figure : 0;
  }
  const size = moved(whole(moved(seen(Math.abs(figure)), digits)), -digits);
  return figure < 0 ? -size : size;
}

const half: Whole = (figure) => Math.floor(seen(figure + 0.5));

const rounding = (whole: Whole): Standard =>
  ofValues(1, 2, (cell = null, places = null) => {
    const [figure = 0, digits = 0] = numbers([cell, places]);
    return rounded(figure, digits, whole);
  });

const ofTwo = (work: (a: number, b: number) => number): Standard =>
  ofValues(2, 2, (left = null, right = null) => {
    const [a = 0, b = 0] = numbers([left, right]);
    return work(a, b);
  });

const floor = (figure: number): number => Math.floor(seen(figure));

function remainder(figure: number, by: number): number {
  if (by === 0) throw new Fault("#DIV/0!");
  if (Math.abs(figure / by) > 1e12) doubt();
  const rest = figure - floor(figure / by) * by;
  return Math.abs(rest) < Math.abs(by) * 1e-13 ? 0 : rest;
}

function toMultiple(figure: number, by: number): number {
  if (figure === 0 || by === 0) return 0;
  if (figure < 0 !== by < 0) {
    doubt();
    throw new Fault("#NUM!");
  }
  return half(figure / by) * by;
}

/** The next multiple up or down. With signs below 0, each program has a rule of its own. */
const multiple = (whole: Whole): Standard =>
  ofTwo((figure, by) => {
    if (figure < 0 || by <= 0) doubt();
    if (by === 0) return 0;
    return whole(figure / by) * by;
  });

const ceiling: Whole = (figure) => Math.ceil(seen(figure));

function logarithm(figure: number, base: number): number {
  if (base === 1) doubt();
  if (figure <= 0 || base <= 0) throw new Fault("#NUM!");
  return quotient(Math.log(figure), Math.log(base));
}

const wholeFigures = (given: readonly Given[]): number[] =>
  given.flatMap(({ rows }) =>
    rows.flat().flatMap((cell) => {
      if (cell instanceof Fault) {
        doubt();
        throw cell;
      }
      if (typeof cell !== "number") {
        if (cell !== null) doubt();
        return [];
      }
      if (cell < 0) {
        doubt();
        throw new Fault("#NUM!");
      }
      return [floor(cell)];
    }),
  );

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

export const arithmetic: Readonly<Record<string, Standard>> = {
  ABS: ofOne(Math.abs),
  SIGN: ofOne(Math.sign),
  SQRT: ofOne(within((figure) => figure >= 0, Math.sqrt)),
  EXP: ofOne(Math.exp),
  LN: ofOne(within(isPositive, Math.log)),
  LOG10: ofOne(within(isPositive, Math.log10)),
  LOG: ofValues(1, 2, (cell = null, base) => {
    const [figure = 0, given = 10] = numbers(base === undefined ? [cell] : [cell, base]);
    return logarithm(figure, given);
  }),
  INT: ofOne(floor),
  TRUNC: rounding(floor),
  ROUND: rounding(half),
  ROUNDDOWN: rounding(floor),
  ROUNDUP: rounding(ceiling),
  CEILING: multiple(ceiling),
  FLOOR: multiple(floor),
  MROUND: ofTwo(toMultiple),
  MOD: ofValues(2, 2, (cell = null, by = null) => {
    // nothing to divide by and nothing to divide: which of the two is said
    if (typeof cell !== "number" && (by instanceof Fault || by === null || Number(by) === 0))
      doubt();
    const [figure = 0, divisor = 0] = numbers([cell, by]);
    return remainder(figure, divisor);
  }),
  PI: { least: 0, most: 0, kinds: "v", work: () => Math.PI },
  GCD: ofLists((given) => wholeFigures(given).reduce(commonDivisor, 0)),
};

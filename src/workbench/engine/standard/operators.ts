/** The signs between two values. A minus before one value is taken from nothing. */
import type { BaseValueObject } from "@univerjs/engine-formula";
import type { EngineFunction } from "../adapter";
import { ofValues, type Standard, standardFunction } from "./adapter";
import { doubt } from "./doubt";
import { compare, isClose } from "./compare";
import { numbers, text } from "./convert";
import { type Cell, Fault } from "./value";

/** What is left of two figures that are equal but for the doubles is nothing. */
function sum(a: number, b: number): number {
  return (a < 0 && b > 0) || (a > 0 && b < 0) ? (isClose(a, -b) ? 0 : a + b) : a + b;
}

export function quotient(a: number, b: number): number {
  if (b === 0) throw new Fault("#DIV/0!");
  return a / b;
}

function power(base: number, exponent: number): number {
  if (base === 0 && exponent === 0) doubt();
  if (base < 0 && !Number.isInteger(exponent)) {
    doubt();
    throw new Fault("#NUM!");
  }
  if (base === 0 && exponent < 0) {
    doubt();
    throw new Fault("#DIV/0!");
  }
  return base ** exponent;
}

const figures = (work: (a: number, b: number) => number): Standard =>
  ofValues(2, 2, (left = null, right = null) => {
    const [a = 0, b = 0] = numbers([left, right]);
    return work(a, b);
  });

const holds: Readonly<Record<string, (order: number) => boolean>> = {
  "=": (order) => order === 0,
  "<>": (order) => order !== 0,
  "<": (order) => order < 0,
  ">": (order) => order > 0,
  "<=": (order) => order <= 0,
  ">=": (order) => order >= 0,
};

/** One for each sign, chosen when the formula is worked out. */
class Compare extends standardFunction(ofValues(2, 2, () => null)) {
  private sign = "=";

  setCompareType(sign: string): void {
    this.sign = sign;
  }

  override calculate(...given: BaseValueObject[]) {
    return comparing(this.sign)(...given);
  }
}

const made = new Map<string, (...given: BaseValueObject[]) => BaseValueObject>();

function comparing(sign: string): (...given: BaseValueObject[]) => BaseValueObject {
  let found = made.get(sign);
  if (!found) {
    const isOrder = sign !== "=" && sign !== "<>";
    const standard = ofValues(2, 2, (left: Cell = null, right: Cell = null) =>
      Boolean(holds[sign]?.(compare(left, right, isOrder))),
    );
    const instance = new (standardFunction(standard))("COMPARE");
    found = (...given) => instance.calculate(...given) as BaseValueObject;
    made.set(sign, found);
  }
  return found;
}

const joined: Standard = ofValues(1, 255, (...cells) => cells.map(text).join(""));

export const operators: readonly (readonly [EngineFunction, string])[] = [
  [standardFunction(figures(sum)), "PLUS"],
  [standardFunction(figures((a, b) => sum(a, -b))), "MINUS"],
  [standardFunction(figures((a, b) => a * b)), "MULTIPLY"],
  [standardFunction(figures(quotient)), "DIVIDED"],
  [standardFunction(figures(power)), "POWER"],
  [standardFunction(joined), "CONCATENATE"],
  [Compare, "COMPARE"],
];

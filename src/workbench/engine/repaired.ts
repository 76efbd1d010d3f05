/**
 * Two of the embedded engine's own functions, put right. It looks comparisons with a cell up in an
 * index of the cell's column, which knows no errors once it is built: a comparison with #N/A is then
 * FALSE, and IF goes on with a wrong answer. And its TINV is right to nine digits only.
 */
import {
  type ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  functionCompatibility,
  functionMeta,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { studentT } from "../../core/replicates/student-t";
import type { EngineFunction } from "./adapter";

/** A reference to one cell arrives as an array of one. */
function single(given: BaseValueObject): BaseValueObject {
  if (!given.isArray()) return given;
  const array = given as ArrayValueObject;
  const isOne = array.getRowCount() === 1 && array.getColumnCount() === 1;
  return isOne ? array.getFirstCell() : given;
}

type Listed = readonly (readonly (string | (new (name: string) => BaseFunction))[])[];

/** The engine lists a function as its class and its name. */
function ownFunction(list: Listed, name: string): EngineFunction {
  const found = list.find((entry) => entry[1] === name)?.[0];
  if (typeof found !== "function") throw new Error(`the engine has no function ${name}`);
  return found;
}

class Compare extends ownFunction(functionMeta, "COMPARE") {
  override calculate(left: BaseValueObject, right: BaseValueObject): BaseValueObject {
    return super.calculate(single(left), single(right)) as BaseValueObject;
  }
}

class Tinv extends ownFunction(functionCompatibility, "TINV") {
  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const [outside, freedom] = given.map((each) => single(each).getValue());
    const isWithin =
      typeof outside === "number" &&
      typeof freedom === "number" &&
      outside > 0 &&
      outside < 1 &&
      freedom >= 1;
    if (!isWithin) return super.calculate(...given) as BaseValueObject;
    return NumberValueObject.create(studentT(outside, Math.floor(freedom)));
  }
}

export const repairedFunctions: [EngineFunction, string][] = [
  [Compare, "COMPARE"],
  [Tinv, "TINV"],
];

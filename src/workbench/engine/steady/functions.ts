/** The engine's functions, each of which ends its own cell at most, whatever happens inside it. */
import {
  type ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  FunctionService,
} from "@univerjs/engine-formula";
import { copied } from "./arrays";
import type { Failures } from "./failures";

type Result = ReturnType<BaseFunction["calculate"]>;

const isNoFigure = (value: BaseValueObject): boolean =>
  value.isNumber() && !Number.isFinite(value.getValue());

/** No file can hold what is no figure: an overflow, 0/0. */
function figures(result: Result): Result {
  if (!result.isValueObject()) return result;
  const value = result as BaseValueObject;
  if (!value.isArray()) return isNoFigure(value) ? ErrorValueObject.create(ErrorType.NUM) : value;
  const array = value as ArrayValueObject;
  for (const row of array.getArrayValue()) {
    for (const [column, cell] of row.entries()) {
      if (cell && isNoFigure(cell)) row[column] = ErrorValueObject.create(ErrorType.NUM);
    }
  }
  return array;
}

/** Puts a function's working out in a frame that nothing leaves. */
function steady(made: BaseFunction, failures: Failures): void {
  const calculate = made.calculate.bind(made);
  made.calculate = (...given: BaseValueObject[]): Result => {
    try {
      return figures(calculate(...given));
    } catch {
      // it may have tried to sort what others read as well
      try {
        return figures(calculate(...given.map(copied)));
      } catch {
        failures.formula();
        return ErrorValueObject.create(ErrorType.VALUE);
      }
    }
  };
}

export class SteadyFunctions extends FunctionService {
  constructor(private readonly failures: Failures) {
    super();
  }

  override registerExecutors(...functions: BaseFunction[]): void {
    for (const each of functions) steady(each, this.failures);
    super.registerExecutors(...functions);
  }
}

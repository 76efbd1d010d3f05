/**
 * A function of the catalogue as a function of the embedded engine. A class of the engine's own kind is
 * used, never its simple registration: that turns blank cells into 0, and one thrown error stops every
 * later calculation.
 */
import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
} from "@univerjs/engine-formula";
import { isMissing, isProblem } from "../../core/problem/problem";
import type { CellValue } from "../../functions/answer";
import { namespace } from "../../functions/names";
import type { WorksheetFunction } from "../../functions/define";
import { isOptional } from "../../functions/metadata";
import { argumentIn, cellOut } from "./cells";

export type EngineFunction = new (name: string) => BaseFunction;

/** TITRE.CORRECTED, as it is typed into a cell. */
export const engineName = (entry: WorksheetFunction): string => `${namespace}.${entry.id}`;

/** How many arguments must be there at least: all up to the last that has no brackets. */
const required = (entry: WorksheetFunction): number =>
  entry.arguments.reduce(
    (count, argument, position) => (isOptional(argument) ? count : position + 1),
    0,
  );

const spilled = (rows: CellValue[][], home: BaseFunction): BaseValueObject =>
  ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map(cellOut)),
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: home.unitId ?? "",
    sheetId: home.subUnitId ?? "",
    row: -1,
    column: -1,
  });

export function engineFunction(entry: WorksheetFunction): EngineFunction {
  return class extends BaseFunction {
    override minParams = required(entry);
    override maxParams = entry.arguments.length;

    /** "5%" between quotation marks is text. */
    override isArgumentsIgnoreNumberPattern(): boolean {
      return true;
    }

    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const answer = entry.evaluate(given.map(argumentIn));
      if (isProblem(answer)) {
        return ErrorValueObject.create(isMissing(answer) ? ErrorType.NA : ErrorType.VALUE);
      }
      return Array.isArray(answer) ? spilled(answer, this) : cellOut(answer);
    }
  };
}

/** What the embedded engine is told about the catalogue: the functions, and their help while typing. */
import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import { catalogue } from "../../functions/catalogue";
import type { NamedArgument, WorksheetFunction } from "../../functions/define";
import { described, isOptional, shownName } from "../../functions/metadata";
import { type EngineFunction, engineFunction, engineName } from "./adapter";
import { repairedFunctions } from "./repaired";
import { standardFunctions } from "./standard/standard-functions";

export const engineFunctions: [EngineFunction, string][] = [
  ...repairedFunctions,
  ...standardFunctions,
  ...catalogue.map((entry): [EngineFunction, string] => [engineFunction(entry), engineName(entry)]),
];

const flag = (value: boolean): BooleanNumber => (value ? BooleanNumber.TRUE : BooleanNumber.FALSE);

const parameter = (argument: NamedArgument): IFunctionInfo["functionParameter"][number] => ({
  name: shownName(argument),
  detail: `${described(argument)} Allowed: ${argument.allowed}.`,
  example: argument.list ? "B2:D2" : "B2",
  require: flag(!isOptional(argument)),
  repeat: BooleanNumber.FALSE,
});

const description = (entry: WorksheetFunction): IFunctionInfo => ({
  functionName: engineName(entry),
  functionType: FunctionType.User,
  description: [entry.summary, ...entry.notes].join(" "),
  abstract: entry.summary,
  functionParameter: entry.arguments.map(parameter),
});

export const descriptions: IFunctionInfo[] = catalogue.map(description);

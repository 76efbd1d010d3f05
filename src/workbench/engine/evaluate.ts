/**
 * What a reference or any other expression comes to now, as seen from a cell: worked out by the engine
 * itself, so that it is what a function in that cell would be given.
 */
import type { Injector } from "@univerjs/core";
import {
  AstTreeBuilder,
  type BaseReferenceObject,
  type BaseValueObject,
  type FunctionVariantType,
  generateExecuteAstNodeData,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  Interpreter,
  Lexer,
  LexerNode,
} from "@univerjs/engine-formula";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { argumentIn, type GivenCell } from "./cells";
import type { CellPlace } from "../../sheet/area";
import type { WorkbookNames } from "./workbook-names";

const asValue = (found: FunctionVariantType): BaseValueObject =>
  found.isReferenceObject()
    ? (found as BaseReferenceObject).toArrayValueObject()
    : (found as BaseValueObject);

/** The engine works out one thing at a time: never put a question to it in the middle of another. */
function isBusy(injector: Injector): boolean {
  const { started, completed } = injector.get(FormulaCalculationSessionService).state;
  return started && !completed;
}

/** Rows of raw values; one row of one for a single value. Undefined when it cannot be said now. */
export function evaluate(
  injector: Injector,
  names: WorkbookNames,
  expression: string,
  { sheet, row, column }: CellPlace,
): GivenCell[][] | undefined {
  const worksheet = names.sheet(sheet);
  if (!worksheet || isBusy(injector)) return undefined;
  injector.get(IFormulaCurrentConfigService).loadDataLite();
  const runtime = injector.get(IFormulaRuntimeService);
  runtime.reset();
  runtime.setCurrent(
    row,
    column,
    worksheet.getRowCount(),
    worksheet.getColumnCount(),
    worksheet.getSheetId(),
    names.unit,
  );
  const lexed = injector.get(Lexer).treeBuilder(`=${expression}`);
  // An expression that makes no sense comes back as an error code, or as nothing.
  const tree = lexed instanceof LexerNode ? injector.get(AstTreeBuilder).parse(lexed) : null;
  if (!tree) return undefined;
  const found = injector.get(Interpreter).execute(generateExecuteAstNodeData(tree));
  const given = argumentIn(asValue(found));
  return Array.isArray(given) ? given : [[given]];
}

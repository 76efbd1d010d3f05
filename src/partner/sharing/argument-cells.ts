/** One argument of a call: cells, a figure or word written out, or helper cells for what is worked out. */
import type { NamedArgument } from "../../functions/define";
import { titreCallId } from "../../sheet/formula/names";
import { print } from "../../sheet/formula/print";
import type { ArrayConstant, Call, Constant, Expression } from "../../sheet/formula/tree";
import type { Builder } from "./workings/builder";
import { blockOf, type CallsInside } from "./answered";
import { expressionText } from "./expression-text";
import { type Located, same } from "./workings/located";
import { locate } from "./workings/locate";
import { NoTwin, noTwin } from "./no-twin";
import { type Shape, shapeOf } from "./shape";
import { spillOf } from "./spilled";

/** Helper cells for one argument; more are not written out one by one. */
const mostHelpers = 2000;

const constantText = (constant: Constant): string => {
  const text = print(constant);
  return text.startsWith("-") ? `(${text})` : text;
};

const arrayCells = (array: ArrayConstant): Located => ({
  rows: array.rows.length,
  columns: array.rows[0]?.length ?? 0,
  whole: same(print(array)),
  cell: (row, column) => {
    const constant = array.rows[row]?.[column];
    return same(constant ? constantText(constant) : '""');
  },
});

/** -2, 5 %: figures with a sign. */
function signedFigure(expression: Expression): string | undefined {
  const isSigned = expression.kind === "prefix" || expression.kind === "postfix";
  if (!isSigned || expression.operand.kind !== "number") return undefined;
  return `(${print(expression)})`;
}

/** What the helper cell of an argument is called. */
const labelOf = ({ says }: NamedArgument): string => says.replace(/\.$/, "");

function nested(
  call: Call,
  argument: NamedArgument,
  builder: Builder,
  calls: CallsInside,
): Located | string {
  const answer = calls.answerTo(call, builder);
  switch (answer.kind) {
    case "formula":
      return builder.helper(labelOf(argument), answer.formula);
    case "table":
      return argument.list
        ? blockOf(answer, labelOf(argument), builder)
        : noTwin(`${argument.name} takes one cell and is given a table`);
    case "value":
      throw new NoTwin(`${argument.name} is a sentence that has no plain formula`, true);
  }
}

/** Helper cells for what a range is worked out by, cell by cell. */
function workedOut(
  expression: Expression,
  argument: NamedArgument,
  builder: Builder,
  { nestedText }: CallsInside,
): Located {
  const shape: Shape | undefined = shapeOf(
    expression,
    (reference) => locate(reference, builder.around),
    (part) => part.kind === "call" && titreCallId(part) !== undefined,
  );
  if (!shape) return noTwin(`${argument.name} is worked out in a way that is not taken apart`);
  const { rows, columns } = shape;
  if (rows * columns > mostHelpers)
    noTwin(`${argument.name} is too large to be worked out in cells`);
  const cell = (row: number, column: number) =>
    expressionText(
      expression,
      builder,
      nestedText,
      rows * columns > 1 ? { row, column } : undefined,
    );
  const formulas = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => cell(row, column)),
  );
  const label = labelOf(argument);
  return rows === 1 ? builder.line(label, formulas[0] ?? []) : builder.block(label, formulas);
}

/** Cells, or the text of a single value. */
export function argumentCells(
  given: Expression,
  argument: NamedArgument,
  builder: Builder,
  calls: CallsInside,
): Located | string {
  switch (given.kind) {
    case "number":
    case "text":
    case "boolean":
    case "error":
      return constantText(given);
    case "array":
      return arrayCells(given);
    case "reference":
      return locate(given, builder.around);
    default:
  }
  const figure = signedFigure(given);
  if (figure !== undefined) return figure;
  const spill = spillOf(given, builder);
  if (spill) return spill;
  if (given.kind === "call" && titreCallId(given) !== undefined) {
    return nested(given, argument, builder, calls);
  }
  if (given.kind === "binary" && given.operator === ",") {
    return noTwin(`${argument.name} is several ranges at once`);
  }
  return argument.list
    ? workedOut(given, argument, builder, calls)
    : builder.helper(labelOf(argument), expressionText(given, builder, calls.nestedText));
}

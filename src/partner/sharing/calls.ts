/** A call of one of our functions, written in plain functions with the help of its twin. */
import { functionNamed } from "../../functions/catalogue";
import { namespace } from "../../functions/names";
import type { NamedArgument, WorksheetFunction } from "../../functions/define";
import type { Twin, TwinArgument } from "../../functions/twin";
import { plainName, titreCallId } from "../../sheet/formula/names";
import type { Call, Expression, Omitted } from "../../sheet/formula/tree";
import { type Answer, blockOf, type CallsInside } from "./answered";
import { argumentCells } from "./argument-cells";
import type { Builder } from "./workings/builder";
import { expressionText } from "./expression-text";
import type { Located } from "./workings/located";
import { NoTwin, noTwin } from "./no-twin";
import { isMark } from "./workings/template";

/** More single cells than this are not written out one by one. */
const mostCells = 5000;

function twinArgument(builder: Builder, cells: Located, count: () => void): TwinArgument {
  return {
    text: builder.mark(cells.whole),
    rows: cells.rows,
    columns: cells.columns,
    cell(row, column) {
      count();
      return builder.mark(cells.cell(row, column));
    },
  };
}

function answerOf(call: Call, entry: WorksheetFunction, twin: Twin, builder: Builder): Answer {
  const known = new Map<string, TwinArgument | undefined>();
  let counted = 0;
  const count = () => {
    counted += 1;
    if (counted > mostCells) noTwin("its range is too large to be written out cell by cell");
  };
  const found = (argument: NamedArgument): TwinArgument | undefined => {
    const given = call.arguments[entry.arguments.indexOf(argument)];
    if (!given || given.kind === "omitted") return undefined;
    const cells = argumentCells(given, argument, builder, calls);
    return typeof cells === "string"
      ? { text: cells, rows: 1, columns: 1, cell: () => cells }
      : twinArgument(builder, cells, count);
  };
  const answer = twin({
    argument(name) {
      if (known.has(name)) return known.get(name);
      const argument = entry.arguments.find((each) => each.name === name);
      const value = argument && found(argument);
      known.set(name, value);
      return value;
    },
    helper: (label, formula) => builder.helper(label, formula),
    helperColumn(label, formulas) {
      const line = twinArgument(builder, builder.line(label, formulas), count);
      // Side by side, so that the row of a formula stays one row; asked for as one below another.
      const cell = (row: number, column: number) => line.cell(0, row + column);
      return { text: line.text, rows: formulas.length, columns: 1, cell };
    },
  });
  return answer.kind === "none" ? noTwin(answer.reason) : answer;
}

/** An argument that takes a range and is given IF(...): each side is a call by itself. */
function choiceIn(call: Call, entry: WorksheetFunction): number {
  return entry.arguments.findIndex(({ list }, index) => {
    const given = call.arguments[index];
    return list && given?.kind === "call" && plainName(given.name) === "IF";
  });
}

function withArgument(call: Call, index: number, given: Expression | Omitted): Call {
  return { ...call, arguments: call.arguments.map((own, at) => (at === index ? given : own)) };
}

const noBranch = (call: Call, value: boolean): Expression => ({
  kind: "boolean",
  value,
  start: call.start,
  end: call.end,
});

function joined(condition: string, yes: Answer, no: Answer): Answer {
  const either = (a: string, b: string) => (a === b ? a : `IF(${condition},${a},${b})`);
  if (yes.kind === "value" || no.kind === "value") return { kind: "value" };
  if (yes.kind === "formula" && no.kind === "formula") {
    return { kind: "formula", formula: either(yes.formula, no.formula) };
  }
  if (yes.kind !== "table" || no.kind !== "table") return noTwin("its answers differ in size");
  const sizes = [yes, no].map(({ formulas }) => formulas.map((row) => row.length).join());
  if (sizes[0] !== sizes[1]) noTwin("its answers differ in size");
  const rows = yes.formulas.map((row, at) =>
    row.map((cell, column) => {
      const other = no.formulas[at]?.[column];
      return cell === undefined || other === undefined ? undefined : either(cell, other);
    }),
  );
  return { kind: "table", formulas: rows };
}

function oneOfTwo(call: Call, index: number, entry: WorksheetFunction, builder: Builder): Answer {
  const choice = call.arguments[index] as Call;
  const [test, yes, no = noBranch(choice, false)] = choice.arguments;
  if (!test || test.kind === "omitted" || !yes) return noTwin("its condition is missing");
  const name = entry.arguments[index]?.name ?? "";
  // Figures, since programs differ in how they show TRUE.
  const which = builder.helper(
    `${name}: 1 takes the first range, 2 the other`,
    `IF(${expressionText(test, builder, nestedText)},1,2)`,
  );
  const condition = `${which}=1`;
  builder.countChoice();
  const side = (when: boolean, given: Expression | Omitted): Answer => {
    const outside = builder.guards;
    builder.guards = [...outside, { condition, when }];
    const answer = answerTo(withArgument(call, index, given), builder);
    builder.guards = outside;
    return answer;
  };
  const first = side(true, yes);
  return joined(condition, first, side(false, no));
}

/** What a call comes to. Throws NoTwin where it has no plain formula. */
function answerTo(call: Call, builder: Builder): Answer {
  const id = titreCallId(call) ?? "";
  const entry = functionNamed(id);
  if (!entry) return noTwin(`there is no function ${namespace}.${id}`);
  builder.ids.add(id);
  if (call.arguments.length > entry.arguments.length) {
    return noTwin(`${namespace}.${id} takes ${String(entry.arguments.length)} arguments`);
  }
  const twin = builder.twinOf(id);
  if (!twin) return noTwin(`${namespace}.${id} has no plain formula`);
  const choice = choiceIn(call, entry);
  if (choice >= 0) return oneOfTwo(call, choice, entry, builder);
  return answerOf(call, entry, twin, builder);
}

/** What the cell of an answer is called: "TITRE.CORRECTED, mL". */
const answerLabel = (call: Call): string => {
  const id = titreCallId(call) ?? "";
  const unit = functionNamed(id)?.result ?? "";
  return `${namespace}.${id}${unit ? `, ${unit}` : ""}`;
};

/** The same for a formula in a cell, which may lie beside its helper cells no longer. */
export function shownAnswer(call: Call, builder: Builder): Answer {
  const answer = answerTo(call, builder);
  if (answer.kind !== "formula") return answer;
  return { kind: "formula", formula: builder.answer(answerLabel(call), answer.formula) };
}

/** A call inside something larger, as text that can stand there. */
function nestedText(call: Call, builder: Builder): string {
  const answer = shownAnswer(call, builder);
  const id = titreCallId(call) ?? "";
  switch (answer.kind) {
    case "formula":
      return isMark(answer.formula) ? answer.formula : `(${answer.formula})`;
    case "table":
      return builder.mark(blockOf(answer, `${namespace}.${id}`, builder).whole);
    case "value":
      throw new NoTwin(`the sentence of ${namespace}.${id} is part of a larger formula`, true);
  }
}

/** What else stands in a formula needs calls answered, and a call needs what stands in it: so they are handed down. */
const calls: CallsInside = { answerTo, nestedText };

/** Part of a formula written out again. */
export const partText = (expression: Expression, builder: Builder): string =>
  expressionText(expression, builder, nestedText);

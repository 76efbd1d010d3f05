/**
 * One call of ours written out in plain formulas on an empty sheet, for a reader: the helper cells
 * first, then the answer. The partner copy writes calls into a workbook instead (see sharing).
 */
import { cellName } from "../../sheet/cell-name";
import { functionNamed } from "../../functions/catalogue";
import type { WorksheetFunction } from "../../functions/define";
import type { TwinAnswer, TwinArgument } from "../../functions/twin";
import { twinOf } from "../twins/twins";
import { titreCallId } from "../../sheet/formula/names";
import { print } from "../../sheet/formula/print";
import type { Call, Expression } from "../../sheet/formula/tree";
import { titreCalls } from "../../sheet/formula/walk";
import { Page, type PlainCell } from "./page";
import { NotHere, plainArgument, single } from "./plain-argument";

export type PlainCall =
  | {
      readonly kind: "formulas";
      readonly helpers: readonly PlainCell[];
      /** One, or those of a table from A1 on: its other cells keep their words. */
      readonly answer: readonly PlainCell[];
    }
  /** A sentence: a copy keeps its value. */
  | { readonly kind: "value" }
  /** The reason completes "No plain formula: ...". */
  | { readonly kind: "none"; readonly reason: string };

function argumentOf(part: Expression, name: string, isList: boolean, page: Page): TwinArgument {
  const plain = plainArgument(part);
  if (plain) return plain;
  const inner = part.kind === "call" ? functionNamed(titreCallId(part) ?? "") : undefined;
  if (part.kind === "call" && inner) {
    const answer = answerTo(inner, part, page);
    if (answer.kind === "formula") return single(page.helper(name, answer.formula));
  }
  if (isList || titreCalls(part).length > 0) {
    throw new NotHere(`${name} is worked out first, which only a copy of a workbook can show`);
  }
  return single(page.helper(name, print(part)));
}

function answerTo(entry: WorksheetFunction, call: Call, page: Page): TwinAnswer {
  const known = new Map<string, TwinArgument | undefined>();
  const read = (name: string): TwinArgument | undefined => {
    const place = entry.arguments.findIndex((argument) => argument.name === name);
    const part = call.arguments[place];
    if (!part || part.kind === "omitted") return undefined;
    return argumentOf(part, name, entry.arguments[place]?.list ?? false, page);
  };
  const twin = twinOf(entry.id);
  if (!twin) throw new NotHere(`${entry.id} has none`);
  return twin({
    argument(name) {
      if (!known.has(name)) known.set(name, read(name));
      return known.get(name);
    },
    helper: (label, formula) => page.helper(label, formula),
    helperColumn: (label, formulas) => page.column(label, formulas),
  });
}

function cellsOf(answer: TwinAnswer & { kind: "table" | "formula" }): PlainCell[] {
  const table = answer.kind === "formula" ? [[answer.formula]] : answer.formulas;
  return table.flatMap((line, row) =>
    line.flatMap((formula, column) => {
      const cell = cellName(row, column);
      return formula === undefined ? [] : [{ cell, label: "", formula: `=${formula}` }];
    }),
  );
}

/** @param call a call of the entry, from the tree of a formula */
export function plainCall(entry: WorksheetFunction, call: Call): PlainCall {
  const page = new Page();
  try {
    const answer = answerTo(entry, call, page);
    if (answer.kind === "value" || answer.kind === "none") return answer;
    return { kind: "formulas", helpers: page.helpers, answer: cellsOf(answer) };
  } catch (reason) {
    if (reason instanceof NotHere) return { kind: "none", reason: reason.message };
    throw reason;
  }
}

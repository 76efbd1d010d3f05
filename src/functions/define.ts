/**
 * A worksheet function is defined once, here: its words, its argument readers, the core call, an
 * example that the tests run, and its sources. The list of functions for the spreadsheet program,
 * registration, the README table, the help pages and the property tests all read that one entry.
 */
import { isProblem, type Outcome, type Problem } from "../core/problem/problem";
import type { SourceId } from "../core/reference/sources";
import type { Argument } from "./arguments";
import { type Answer, type Result, type ResultTable, toCells } from "./answer";
import { type FunctionId, spills } from "./names";

// eslint-disable-next-line @typescript-eslint/no-explicit-any -- a record of readers of any type
type Arguments = Record<string, Argument<any>>;
type Values<A extends Arguments> = {
  readonly [Name in keyof A]: A[Name] extends Argument<infer T> ? T : never;
};

export interface Example {
  /** As typed into a cell, with figures instead of references. */
  readonly formula: string;
  /** What the cell then shows: worked out by hand or published, never by our own code. */
  readonly gives: number | string | boolean | readonly (readonly (number | string | boolean)[])[];
}

export interface More {
  /** What the result is, with its unit: "mL", "% m/m". */
  readonly result: string;
  /** The arithmetic, with argument names in braces, so that figures can be put in. */
  readonly equation: string;
  /** Help beyond the one-line description: what it is for, and what it leaves out. */
  readonly notes: readonly string[];
  readonly example: Example;
  readonly sources: readonly SourceId[];
}

export interface NamedArgument extends Argument<unknown> {
  /** The name in the interface: sampleMass. */
  readonly name: string;
}

export interface WorksheetFunction extends More {
  readonly id: FunctionId;
  readonly summary: string;
  /** The result is a range that spills. */
  readonly spills: boolean;
  readonly arguments: readonly NamedArgument[];
  /** Arguments as a host hands them over; an answer for cells, or a problem. Never throws. */
  evaluate(given: readonly unknown[]): Answer | Problem;
}

/** Read the arguments in order; the first problem wins. */
function readAll<A extends Arguments>(readers: A, given: readonly unknown[]): Outcome<Values<A>> {
  const values: Record<string, unknown> = {};
  for (const [position, [name, reader]] of Object.entries(readers).entries()) {
    const value: unknown = reader.read(given[position], name);
    if (isProblem(value)) return value;
    values[name] = value;
  }
  return values as Values<A>;
}

export function worksheetFunction<A extends Arguments>(
  id: FunctionId,
  summary: string,
  readers: A,
  work: (values: Values<A>) => Outcome<Result | ResultTable>,
  more: More,
): WorksheetFunction {
  return {
    id,
    summary,
    spills: spills(id),
    ...more,
    arguments: Object.entries(readers).map(([name, reader]) => ({ ...reader, name })),
    evaluate(given) {
      const values = readAll(readers, given);
      if (isProblem(values)) return values;
      const result = work(values);
      return isProblem(result) ? result : toCells(result);
    },
  };
}

/**
 * The arguments of a call as a twin reads them. What they may be comes from the entry's own readers:
 * their limits, their words, what leaving them out means. A constant is read at once by the reader
 * itself; a reference gets a guard that says the same in the formula.
 */
import { isExact } from "../../../core/exact/exact";
import { isMissing, isProblem } from "../../../core/problem/problem";
import type { NamedArgument, WorksheetFunction } from "../../../functions/define";
import type { TwinAnswer, TwinArgument, TwinCall } from "../../../functions/twin";
import { constantOf } from "./constant";
import { always, and, figure, isEmpty, limitsOf, missing, or, when, wrong } from "./text";

/** Known while the twin is written, or a cell to be read when it is worked out. */
export type Given =
  | { readonly isKnown: true; readonly value: unknown }
  | { readonly isKnown: false; readonly cell: string };

export class Reading {
  readonly #read = new Map<string, Given>();
  readonly #missing: string[] = [];
  readonly #allowed: string[] = [];
  readonly #helpers = new Set<string>();
  #refusal: string | undefined;

  constructor(
    readonly entry: WorksheetFunction,
    readonly call: TwinCall,
  ) {}

  reader(name: string): NamedArgument {
    const found = this.entry.arguments.find((argument) => argument.name === name);
    if (!found) throw new Error(`${this.entry.id} has no argument ${name}`);
    return found;
  }

  /** No answer is possible: the first reason stands. */
  refuse(error: string): void {
    this.#refusal ??= error;
  }

  /** Not enough is filled in when this holds. */
  needs(isMissing: string): void {
    this.#missing.push(isMissing);
  }

  /** Wrong unless this holds. Only asked once everything needed is there. */
  allow(...conditions: readonly string[]): void {
    this.#allowed.push(...conditions);
  }

  /** An error in this helper cell is an error in every cell of a table, used there or not. */
  passOn(cell: string): void {
    if (!constantOf(cell)) this.#helpers.add(cell);
  }

  /** What a constant, or leaving the argument out, means. A problem refuses the whole call. */
  meaning(name: string, value: unknown): Given {
    const read = this.reader(name).read(value, name);
    if (isProblem(read)) this.refuse(isMissing(read) ? missing : wrong);
    return { isKnown: true, value: isProblem(read) ? undefined : read };
  }

  /** An argument that takes one cell. */
  one(name: string): Given {
    const known = this.#read.get(name) ?? this.#readOne(name);
    this.#read.set(name, known);
    return known;
  }

  #readOne(name: string): Given {
    const given = this.call.argument(name);
    if (!given) return this.meaning(name, undefined);
    if (given.rows * given.columns > 1) this.refuse(wrong);
    return this.cell(name, given);
  }

  /** A range written into the formula, every cell a constant: its meaning; else undefined. */
  constants(name: string, given: TwinArgument): Given | undefined {
    const rows: unknown[][] = [];
    for (let row = 0; row < given.rows; row += 1) {
      const line: unknown[] = [];
      for (let column = 0; column < given.columns; column += 1) {
        const constant = constantOf(given.cell(row, column));
        if (!constant) return undefined;
        line.push(constant.value);
      }
      rows.push(line);
    }
    return this.meaning(name, rows);
  }

  /** The only cell of an argument: its meaning where it is a constant. */
  cell(name: string, given: TwinArgument): Given {
    const cell = given.cell(0, 0);
    const constant = constantOf(cell);
    return constant ? this.meaning(name, constant.value) : { isKnown: false, cell };
  }

  /**
   * A figure, as text for the arithmetic.
   * @param otherwise where leaving it out has no figure of its own
   */
  figure(name: string, otherwise = "0"): string {
    const given = this.one(name);
    if (given.isKnown) return isExact(given.value) ? figure(given.value) : otherwise;
    const { cell } = given;
    const { limits, whenLeftOut, unit, says } = this.reader(name);
    const within = limits ? limitsOf(cell, limits) : [];
    if (whenLeftOut === undefined) {
      this.needs(`${cell}=0`);
      this.needs(`TRIM(${cell})=""`);
      this.allow(...within);
      return cell;
    }
    const usual = this.meaning(name, undefined);
    const value = usual.isKnown && isExact(usual.value) ? figure(usual.value) : otherwise;
    const read = when(isEmpty(cell), value, when(and(...within), cell, wrong));
    const label = `${name}${unit ? `, ${unit}` : ""}: ${says}`;
    const helper = this.call.helper(label, when(`ISLOGICAL(${cell})`, wrong, read));
    this.passOn(helper);
    return helper;
  }

  /** A formula behind the guards. */
  guarded(formula: string): string {
    if (this.#refusal !== undefined) return this.#refusal;
    const allowed = when(and(...this.#allowed), formula, wrong);
    return when(or(...this.#missing), missing, allowed);
  }

  /** One cell. */
  answer(formula: string): TwinAnswer {
    return { kind: "formula", formula: this.guarded(formula) };
  }

  /** A table, each cell of it an error where the call is one. */
  table(formulas: readonly (readonly (string | undefined)[])[]): TwinAnswer {
    const passedOn = [...this.#helpers].reduceRight(
      (rest, cell) => when(`ISERROR(${cell})`, cell, rest),
      always,
    );
    const all = this.call.helper("the arguments are filled in and allowed", this.guarded(passedOn));
    return {
      kind: "table",
      formulas: formulas.map((cells) =>
        cells.map((formula) => (formula === undefined ? undefined : `IF(${all},${formula})`)),
      ),
    };
  }
}

/**
 * A formula as a tree. Parentheses leave no node: the shape of the tree says what they said, and the
 * span of an expression takes in the parentheses around it. Every node knows where it stands.
 */
import type { Span } from "./token";

export interface NumberConstant extends Span {
  readonly kind: "number";
  /** As written: 2.40. */
  readonly text: string;
  readonly value: number;
}
export interface TextConstant extends Span {
  readonly kind: "text";
  /** Without its quotation marks, doubled ones made single. */
  readonly value: string;
}
export interface BooleanConstant extends Span {
  readonly kind: "boolean";
  readonly value: boolean;
}
export interface ErrorConstant extends Span {
  readonly kind: "error";
  /** #N/A, in capitals. */
  readonly value: string;
}
export type Constant = NumberConstant | TextConstant | BooleanConstant | ErrorConstant;

/** {1,2;3,4}: rows of equal length. */
export interface ArrayConstant extends Span {
  readonly kind: "array";
  readonly rows: readonly (readonly Constant[])[];
}

/** One cell, a block, whole columns or rows, a defined name, part of a table, or a lost one. */
export type ReferenceShape = "cell" | "block" | "lines" | "name" | "structured" | "lost";

export interface Reference extends Span {
  readonly kind: "reference";
  readonly shape: ReferenceShape;
  /** As written, sheet name and all. */
  readonly text: string;
}

/** An argument that is left out: its commas are there and nothing is between them. */
export interface Omitted extends Span {
  readonly kind: "omitted";
}

export interface Call extends Span {
  readonly kind: "call";
  /** What stands before the name: "[2]!"; usually nothing. */
  readonly link: string;
  /** As written: _xlfn.STDEV.S, TITRE.DOSE. */
  readonly name: string;
  readonly arguments: readonly (Expression | Omitted)[];
}

/** A function value applied to arguments: LAMBDA(x,x+1)(2). */
export interface Applied extends Span {
  readonly kind: "applied";
  readonly applies: Expression;
  readonly arguments: readonly (Expression | Omitted)[];
}

export interface Prefix extends Span {
  readonly kind: "prefix";
  readonly operator: "+" | "-" | "@";
  readonly operand: Expression;
}

/** A percent sign, or the # that stands for all that a cell spills. */
export interface Postfix extends Span {
  readonly kind: "postfix";
  readonly operator: "%" | "#";
  readonly operand: Expression;
}

export interface Binary extends Span {
  readonly kind: "binary";
  readonly operator: string;
  readonly left: Expression;
  readonly right: Expression;
}

export type Expression =
  Constant | ArrayConstant | Reference | Call | Applied | Prefix | Postfix | Binary;

/**
 * A formula as a tree. Parentheses leave no node: the shape of the tree says what they said. Every node
 * knows where it stands, without the parentheses around it: whoever puts something in its place leaves
 * them there. Where it stands with them, `withBrackets` (span.ts) says.
 */
import type { Span } from "./token";

/** Where an expression stands. */
export interface Placed extends Span {
  /** With all the parentheses around it; not there when there are none. */
  readonly brackets?: Span;
}

export interface NumberConstant extends Placed {
  readonly kind: "number";
  /** As written: 2.40. */
  readonly text: string;
  readonly value: number;
}
export interface TextConstant extends Placed {
  readonly kind: "text";
  /** Without its quotation marks, doubled ones made single. */
  readonly value: string;
}
export interface BooleanConstant extends Placed {
  readonly kind: "boolean";
  readonly value: boolean;
}
export interface ErrorConstant extends Placed {
  readonly kind: "error";
  /** #N/A, in capitals. */
  readonly value: string;
}
export type Constant = NumberConstant | TextConstant | BooleanConstant | ErrorConstant;

/** {1,2;3,4}: rows of equal length. */
export interface ArrayConstant extends Placed {
  readonly kind: "array";
  readonly rows: readonly (readonly Constant[])[];
}

/** One cell, a block, whole columns or rows, a defined name, part of a table, or a lost one. */
export type ReferenceShape = "cell" | "block" | "lines" | "name" | "structured" | "lost";

export interface Reference extends Placed {
  readonly kind: "reference";
  readonly shape: ReferenceShape;
  /** As written, sheet name and all. */
  readonly text: string;
}

/** An argument that is left out: its commas are there and nothing is between them. */
export interface Omitted extends Span {
  readonly kind: "omitted";
}

export interface Call extends Placed {
  readonly kind: "call";
  /** Where the link and the name stand: what to replace so that another function is called. */
  readonly nameAt: Span;
  /** What stands before the name: "[2]!"; usually nothing. */
  readonly link: string;
  /** As written: _xlfn.STDEV.S, TITRE.DOSE. */
  readonly name: string;
  readonly arguments: readonly (Expression | Omitted)[];
}

/** A function value applied to arguments: LAMBDA(x,x+1)(2). */
export interface Applied extends Placed {
  readonly kind: "applied";
  readonly applies: Expression;
  readonly arguments: readonly (Expression | Omitted)[];
}

export interface Prefix extends Placed {
  readonly kind: "prefix";
  readonly operator: "+" | "-" | "@";
  readonly operand: Expression;
}

/** A percent sign, or the # that stands for all that a cell spills. */
export interface Postfix extends Placed {
  readonly kind: "postfix";
  readonly operator: "%" | "#";
  readonly operand: Expression;
}

export interface Binary extends Placed {
  readonly kind: "binary";
  readonly operator: string;
  readonly left: Expression;
  readonly right: Expression;
}

export type Expression =
  Constant | ArrayConstant | Reference | Call | Applied | Prefix | Postfix | Binary;

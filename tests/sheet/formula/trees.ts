/** Helpers and generators for formula trees. */
import fc from "fast-check";
import { isProblem } from "../../../src/core/problem/problem";
import { say } from "../../../src/core/problem/wording";
import { readFormula } from "../../../src/sheet/formula/read";
import { joined } from "../../../src/sheet/formula/referring";
import type {
  ArrayConstant,
  Call,
  Constant,
  Expression,
  Omitted,
  Postfix,
  Prefix,
  Reference,
} from "../../../src/sheet/formula/tree";

/** The tree of a formula that can be read; anything else fails the test. */
export function treeOf(text: string): Expression {
  const formula = readFormula(text);
  if (isProblem(formula)) throw new Error(`${text}: ${say(formula)}`);
  return formula.tree;
}

/** A tree without its positions. */
export function shapeOf(tree: unknown): unknown {
  if (Array.isArray(tree)) return tree.map(shapeOf);
  if (typeof tree !== "object" || tree === null) return tree;
  return Object.fromEntries(
    Object.entries(tree)
      .filter(([key]) => !/^(?:start|end|brackets|nameAt)$/.test(key))
      .map(([key, value]) => [key, shapeOf(value)]),
  );
}

/** Written with brackets around everything that has parts: the shape of a tree at a glance. */
export function bracketed(tree: Expression | Omitted): string {
  const list = (parts: readonly (Expression | Omitted)[]) => parts.map(bracketed).join("; ");
  switch (tree.kind) {
    case "omitted":
      return "-";
    case "number":
      return tree.text;
    case "text":
      return JSON.stringify(tree.value);
    case "boolean":
    case "error":
      return String(tree.value);
    case "array":
      return `{${tree.rows.map(list).join(" | ")}}`;
    case "reference":
      return `<${tree.text}>`;
    case "call":
      return `${tree.link}${tree.name}[${list(tree.arguments)}]`;
    case "applied":
      return `${bracketed(tree.applies)}[${list(tree.arguments)}]`;
    case "prefix":
      return `(${tree.operator}${bracketed(tree.operand)})`;
    case "postfix":
      return `(${bracketed(tree.operand)}${tree.operator})`;
    case "binary":
      return `(${bracketed(tree.left)} ${tree.operator === " " ? "_" : tree.operator} ${bracketed(tree.right)})`;
  }
}

const at = { start: 0, end: 0 };

const figure: fc.Arbitrary<Constant> = fc
  .oneof(fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }), fc.nat())
  .map(Math.abs)
  .map((value) => ({ kind: "number", text: String(value), value, ...at }));

const otherConstant: fc.Arbitrary<Constant> = fc.oneof(
  fc
    .oneof(fc.string(), fc.constantFrom('a"b', "TITRE.DOSE(1)", "'", "=[", "ª"))
    .map((value): Constant => ({ kind: "text", value, ...at })),
  fc.boolean().map((value): Constant => ({ kind: "boolean", value, ...at })),
  fc
    .constantFrom("#N/A", "#VALUE!", "#DIV/0!", "#REF!", "#NAME?", "#NUM!", "#NULL!", "#SPILL!")
    .map((value): Constant => ({ kind: "error", value, ...at })),
);

const signedFigure: fc.Arbitrary<Constant> = fc
  .tuple(figure, fc.boolean())
  .map(([number, isMinus]) =>
    number.kind === "number" && isMinus
      ? { ...number, text: `-${number.text}`, value: -number.value }
      : number,
  );

const array: fc.Arbitrary<ArrayConstant> = fc
  .tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
  .chain(([rows, columns]) =>
    fc.array(
      fc.array(fc.oneof(signedFigure, otherConstant), { minLength: columns, maxLength: columns }),
      { minLength: rows, maxLength: rows },
    ),
  )
  .map((rows) => ({ kind: "array", rows, ...at }));

const references: [Reference["shape"], string[]][] = [
  ["cell", ["A1", "$B$2", "c$3", "XFD1048576", "'Bob''s (log), 2026'!A1", "[2]Lots!$A$1"]],
  ["cell", ["'C:\\lots\\[May.xlsx]Log'!A1", "Jan:Dec!B2", "'[1]My sheet'!A1", "日本!A1"]],
  ["block", ["A1:B2", "$A$1:B$2", "Lots!A1:A9", "'a b'!$A$1:$A$9"]],
  ["lines", ["A:A", "$B:C", "1:3", "Lots!A:A"]],
  ["name", ["blank_mL", "Lots!blank_mL", "[1]!rate.x", "Ünit_1", "_xlpm.x"]],
  ["structured", ["T[Col]", "T[[#This Row],[A]:[B]]", "T[@Col]", "[@Col]", "T['#'['']", "T[]"]],
  ["structured", ["Titrations[@[Titre 1, mL]:[Titre 6, mL]]", "T[[#Headers],[#Data],[% FFA]]"]],
  ["lost", ["Lots!#REF!"]],
];

const reference: fc.Arbitrary<Reference> = fc
  .constantFrom(...references.flatMap(([shape, texts]) => texts.map((text) => ({ shape, text }))))
  .map((found) => ({ kind: "reference", ...found, ...at }));

const name = fc.constantFrom(
  "SUM",
  "F",
  "_xlfn.STDEV.S",
  "TITRE.DOSE",
  "_xldudf_TITRE_DOSE",
  "log10",
);
const link = fc.constantFrom("", "", "", "[2]!", "'my file.xlam'!");

/** F() has no argument and F(,) two: one argument left out alone cannot be written. */
const isWritable = (given: readonly (Expression | Omitted)[]): boolean =>
  !(given.length === 1 && given[0]?.kind === "omitted");

export const { tree } = fc.letrec<{ tree: Expression; referring: Expression; call: Expression }>(
  (tie) => {
    const argument = fc.oneof(
      { weight: 5, arbitrary: tie("tree") },
      fc.constant<Omitted>({ kind: "omitted", ...at }),
    );
    const given = fc.array(argument, { maxLength: 3 }).filter(isWritable);
    return {
      call: fc
        .record({ link, name, arguments: given })
        .map((parts): Call => ({ kind: "call", ...parts, nameAt: at, ...at })),
      referring: fc.oneof(
        { maxDepth: 4, depthIdentifier: "tree" },
        reference,
        tie("call"),
        tie("call").chain((applies) =>
          given.map((parts): Expression => ({ kind: "applied", applies, arguments: parts, ...at })),
        ),
        tie("referring").map((operand): Postfix => ({
          kind: "postfix",
          operator: "#",
          operand,
          ...at,
        })),
        fc
          .tuple(fc.constantFrom(",", " ", ":"), tie("referring"), tie("referring"))
          .map(([sign, left, right]) => ({ ...joined(sign, left, right), ...at })),
      ),
      tree: fc.oneof(
        { maxDepth: 5, depthIdentifier: "tree" },
        figure,
        otherConstant,
        array,
        tie("referring"),
        fc.tuple(fc.constantFrom("+", "-", "@"), tie("tree")).map(([sign, operand]): Prefix => ({
          kind: "prefix",
          operator: sign as Prefix["operator"],
          operand,
          ...at,
        })),
        tie("tree").map((operand): Expression => ({
          kind: "postfix",
          operator: "%",
          operand,
          ...at,
        })),
        fc
          .tuple(
            fc.constantFrom("+", "-", "*", "/", "^", "&", "=", "<", ">", "<=", ">=", "<>"),
            tie("tree"),
            tie("tree"),
          )
          .map(([operator, left, right]): Expression => ({
            kind: "binary",
            operator,
            left,
            right,
            ...at,
          })),
      ),
    };
  },
);

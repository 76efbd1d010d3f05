/** Every small change of one source file that a test should notice: see each kind's line below. */
import ts from "typescript";

export interface Mutation {
  /** From the project's root. */
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

type Others = ReadonlyMap<string, readonly string[]>;

/** One operator for another: arithmetic, comparison, logic. */
const operators: Others = new Map(
  Object.entries({
    "+": ["-"],
    "-": ["+"],
    "*": ["/"],
    "/": ["*"],
    "%": ["*"],
    "<": ["<=", ">="],
    "<=": ["<", ">"],
    ">": [">=", "<="],
    ">=": [">", "<"],
    "===": ["!=="],
    "!==": ["==="],
    "&&": ["||"],
    "||": ["&&"],
    "+=": ["-="],
    "-=": ["+="],
  }),
);

/** One method for another: the exact decimals have no operators, lists have their own logic. */
const methods: Others = new Map(
  Object.entries({
    plus: ["minus"],
    minus: ["plus"],
    times: ["div"],
    div: ["times"],
    lt: ["lte", "gte"],
    lte: ["lt", "gt"],
    gt: ["gte", "lte"],
    gte: ["gt", "lt"],
    eq: ["lt"],
    max: ["min"],
    min: ["max"],
    some: ["every"],
    every: ["some"],
    floor: ["ceil"],
    ceil: ["floor"],
    isPositive: ["isNegative"],
    isNegative: ["isPositive"],
    atMost: ["atLeast"],
    atLeast: ["atMost"],
  }),
);

const isFigure = (text: string): boolean => /^-?\d+(\.\d+)?(e-?\d+)?$/.test(text);

/** The next figure of the same length: 0.915 becomes 0.916, 1e-9 becomes 2e-9. */
function otherFigure(text: string): string {
  const [mantissa = text, exponent] = text.split("e");
  const last = Number(mantissa.slice(-1));
  const other = `${mantissa.slice(0, -1)}${String(last === 9 ? 8 : last + 1)}`;
  return exponent === undefined ? other : `${other}e${exponent}`;
}

/** The new texts for one piece of the tree, with the piece they stand for. */
function changesOf(node: ts.Node): readonly (readonly [ts.Node, string])[] {
  if (ts.isBinaryExpression(node)) {
    const sign = node.operatorToken;
    return (operators.get(sign.getText()) ?? []).map((other) => [sign, other]);
  }
  if (ts.isPropertyAccessExpression(node)) {
    return (methods.get(node.name.text) ?? []).map((other) => [node.name, other]);
  }
  if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
    return (methods.get(node.expression.text) ?? [])
      .filter((other) => /^at[ML]/.test(other))
      .map((other) => [node.expression, other]);
  }
  if (ts.isConditionalExpression(node) || ts.isIfStatement(node)) {
    const asked = ts.isIfStatement(node) ? node.expression : node.condition;
    return ["true", "false"].map((always) => [asked, `(${always} as boolean)`]);
  }
  if (ts.isPrefixUnaryExpression(node)) {
    const isNot = node.operator === ts.SyntaxKind.ExclamationToken;
    const isMinus = node.operator === ts.SyntaxKind.MinusToken;
    return isNot || isMinus ? [[node, `(${node.operand.getText()})`]] : [];
  }
  if (node.kind === ts.SyntaxKind.TrueKeyword) return [[node, "false"]];
  if (node.kind === ts.SyntaxKind.FalseKeyword) return [[node, "true"]];
  if (ts.isNumericLiteral(node)) return [[node, otherFigure(node.text)]];
  if (ts.isStringLiteral(node)) {
    if (isFigure(node.text)) return [[node, `"${otherFigure(node.text)}"`]];
    // what is written for people has blanks in it, and tests of its own
    return /^[^\s]+$/.test(node.text) ? [[node, '"mutant"']] : [];
  }
  return [];
}

/** Types, imports and the names of fields are no behaviour. */
const isNoBehaviour = (node: ts.Node): boolean =>
  ts.isTypeNode(node) ||
  ts.isInterfaceDeclaration(node) ||
  ts.isTypeAliasDeclaration(node) ||
  ts.isImportDeclaration(node) ||
  ts.isExportDeclaration(node);

export function mutationsOf(file: string, source: string): Mutation[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const found: Mutation[] = [];
  const visit = (node: ts.Node): void => {
    if (isNoBehaviour(node)) return;
    for (const [piece, text] of changesOf(node)) {
      const [start, end] = [piece.getStart(tree), piece.getEnd()];
      if (source.slice(start, end) !== text) found.push({ file, start, end, text });
    }
    ts.forEachChild(node, (child) => {
      if (ts.isPropertyAssignment(node) && child === node.name) return;
      visit(child);
    });
  };
  visit(tree);
  return found;
}

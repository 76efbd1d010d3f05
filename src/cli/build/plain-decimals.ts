/**
 * functions.js adds, subtracts, multiplies, divides and rounds decimals. What decimal.js can do beyond
 * that (angles, logarithms, other number bases) is left out of it as it is bundled: half of the library.
 */
import ts from "typescript";

const angles = ["sine", "cosine", "tangent", "sin", "cos", "tan", "asin", "acos", "atan", "atan2"];
const inverse = ["inverseSine", "inverseCosine", "inverseTangent"];
const hyperbolic = ["sinh", "cosh", "tanh", "asinh", "acosh", "atanh"].concat(
  ["Sine", "Cosine", "Tangent"].flatMap((name) => [
    `hyperbolic${name}`,
    `inverseHyperbolic${name}`,
  ]),
);
const powers = ["toPower", "pow", "cubeRoot", "cbrt", "hypot"];
const logarithms = ["logarithm", "log", "log2", "log10", "ln", "exp"].concat([
  "naturalLogarithm",
  "naturalExponential",
]);
const bases = ["toBinary", "toHexadecimal", "toHex", "toOctal", "toFraction", "random"];

const leftOut = new Set([...angles, ...inverse, ...hyperbolic, ...powers, ...logarithms, ...bases]);

/** `P.sine = P.sin = function ...`, or `Decimal.sin = sin`. */
function isLeftOut(statement: ts.Statement): boolean {
  if (!ts.isExpressionStatement(statement)) return false;
  const { expression } = statement;
  return (
    ts.isBinaryExpression(expression) &&
    expression.operatorToken.kind === ts.SyntaxKind.EqualsToken &&
    ts.isPropertyAccessExpression(expression.left) &&
    ts.isIdentifier(expression.left.expression) &&
    ["P", "Decimal"].includes(expression.left.expression.text) &&
    leftOut.has(expression.left.name.text)
  );
}

/** For the compiler's "before" stage, on decimal.mjs alone. */
export const plainDecimals: ts.TransformerFactory<ts.SourceFile> = (context) => (file) => {
  const { factory } = context;
  const visit = (node: ts.Node): ts.Node => {
    if (ts.isBlock(node)) {
      const kept = node.statements.filter((statement) => !isLeftOut(statement));
      return ts.visitEachChild(factory.updateBlock(node, kept), visit, context);
    }
    return ts.visitEachChild(node, visit, context);
  };
  const kept = file.statements.filter((statement) => !isLeftOut(statement));
  return ts.visitEachChild(factory.updateSourceFile(file, kept), visit, context);
};

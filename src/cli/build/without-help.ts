/**
 * functions.js only calculates: the words of a catalogue entry that only help, lists and the pane need
 * are left out of it as it is compiled. The entry itself stays whole, and every other bundle has it so.
 */
import ts from "typescript";

const onlyForHelp = ["equation", "notes", "example", "sources"];

const isEntry = (node: ts.Node): node is ts.CallExpression =>
  ts.isCallExpression(node) &&
  ts.isIdentifier(node.expression) &&
  node.expression.text === "worksheetFunction";

const isForHelp = (property: ts.ObjectLiteralElementLike): boolean =>
  property.name !== undefined &&
  ts.isIdentifier(property.name) &&
  onlyForHelp.includes(property.name.text);

function withoutWords(entry: ts.CallExpression, make: ts.NodeFactory): ts.CallExpression {
  const [id, , ...rest] = entry.arguments;
  if (id === undefined) return entry;
  return make.updateCallExpression(entry, entry.expression, entry.typeArguments, [
    id,
    make.createStringLiteral(""),
    ...rest.map((argument) =>
      ts.isObjectLiteralExpression(argument)
        ? make.updateObjectLiteralExpression(
            argument,
            argument.properties.filter((property) => !isForHelp(property)),
          )
        : argument,
    ),
  ]);
}

/** For the compiler's "before" stage. */
export const withoutHelp: ts.TransformerFactory<ts.SourceFile> = (context) => (file) => {
  const visit = (node: ts.Node): ts.Node =>
    isEntry(node) ? withoutWords(node, context.factory) : ts.visitEachChild(node, visit, context);
  return ts.visitEachChild(file, visit, context);
};

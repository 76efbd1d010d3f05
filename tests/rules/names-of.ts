/** Which names a file gives to others, and which it takes from whom: for the rule about exports. */
import { dirname, join, normalize } from "node:path";
import ts from "typescript";
import type { SourceFile } from "./sources-of";

interface Names {
  /** What it exports, but for its own types: a type may stand there to name what a function takes. */
  readonly given: readonly string[];
  /** What it imports from files of the project; `*` for a whole file. */
  readonly taken: readonly { readonly from: string; readonly name: string }[];
}

/** What is loaded while running, by the page or by the build, is taken as a whole. */
const loading = /\b(?:import|tsImport)\(\s*(?:\/\*[^*]*\*\/\s*)?["'](\.[^"']+)["']/g;

const isExported = (statement: ts.Statement): boolean =>
  ts.canHaveModifiers(statement) &&
  (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

function declared(statement: ts.Statement): string[] {
  if (!isExported(statement)) return [];
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) => namesIn(name));
  if (ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement))
    return statement.name ? [statement.name.text] : [];
  return [];
}

const namesIn = (name: ts.BindingName): string[] =>
  ts.isIdentifier(name)
    ? [name.text]
    : name.elements.flatMap((part) => (ts.isOmittedExpression(part) ? [] : namesIn(part.name)));

/** The names in the braces of an import, or of an export from elsewhere; none: all of it. */
function bound(statement: ts.ImportDeclaration | ts.ExportDeclaration): string[] {
  const braces = ts.isImportDeclaration(statement)
    ? statement.importClause?.namedBindings
    : statement.exportClause;
  if (!braces || ts.isNamespaceImport(braces) || ts.isNamespaceExport(braces)) return ["*"];
  return braces.elements.map((part) => (part.propertyName ?? part.name).text);
}

export function namesOf({ path, text }: SourceFile): Names {
  const at = (target: string): string => normalize(join(dirname(path), target));
  const given: string[] = [];
  const taken = [...text.matchAll(loading)].map(([, target = ""]) => ({
    from: at(target),
    name: "*",
  }));
  for (const statement of ts.createSourceFile(path, text, ts.ScriptTarget.Latest).statements) {
    given.push(...declared(statement));
    if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) continue;
    const { moduleSpecifier: target } = statement;
    if (
      ts.isExportDeclaration(statement) &&
      statement.exportClause &&
      "elements" in statement.exportClause
    )
      given.push(...statement.exportClause.elements.map((part) => part.name.text));
    if (target && ts.isStringLiteral(target) && target.text.startsWith("."))
      taken.push(...bound(statement).map((name) => ({ from: at(target.text), name })));
  }
  return { given, taken };
}
